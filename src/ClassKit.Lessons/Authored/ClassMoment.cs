namespace ClassKit.Lessons.Authored;

/// <summary>A moment of every class that a talking point can belong to.</summary>
public enum ClassMoment
{
    /// <summary>The beginning, before anybody works.</summary>
    Begin,

    /// <summary>The first team begins a step of a bread.</summary>
    Step,

    /// <summary>The tasting.</summary>
    Tasting,

    /// <summary>Cleaning up.</summary>
    CleanUp,
}
