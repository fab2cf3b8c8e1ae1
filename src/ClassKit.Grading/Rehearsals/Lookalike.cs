using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Rehearsals;

/// <summary>A misconception that came to the same as another, or as the right method, for some of a class.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Part">The part.</param>
/// <param name="Misconception">The misconception.</param>
/// <param name="Other">What it could not be told from; null for the right method.</param>
/// <param name="Students">For how many students' numbers; above 0.</param>
/// <param name="Of">How many students were asked the part.</param>
/// <param name="Value">What both came to for the first of them.</param>
public sealed record Lookalike(
    Exercise Exercise,
    Part Part,
    Misconception Misconception,
    Misconception? Other,
    int Students,
    int Of,
    double Value
);
