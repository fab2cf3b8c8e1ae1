namespace ClassKit.Exercises.Authoring;

/// <summary>How much of the way an exercise shows.</summary>
public enum ExerciseLevel
{
    /// <summary>Every step is asked one by one.</summary>
    Guided,

    /// <summary>The main steps are asked.</summary>
    Standard,

    /// <summary>Only the result is asked.</summary>
    Open,
}
