namespace ClassKit.Exercises.Authoring;

/// <summary>What can be drawn for a student to judge. Whoever takes in all of them has taken in every drawing there is.</summary>
public enum DrawnThing
{
    /// <summary>A dough in its tub, cut open during the proof.</summary>
    CutDough,

    /// <summary>A muffin cut from top to foot.</summary>
    CutMuffin,
}
