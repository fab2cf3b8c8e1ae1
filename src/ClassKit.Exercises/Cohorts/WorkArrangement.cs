using ClassKit.Exercises.Deadlines;

namespace ClassKit.Exercises.Cohorts;

/// <summary>What one student was promised for one work alone. What it does not say is as the student has it in every other.</summary>
/// <param name="Work">The lesson's id, or its title; the title of a work of the term.</param>
/// <param name="LargePrint">Whether it is in large print; null if nothing is said of it.</param>
/// <param name="ExtraTime">More time than the others, as a share of theirs, 0 for none; null if nothing is said of it.</param>
/// <param name="Due">When it is due; null if nothing is said of it.</param>
public sealed record WorkArrangement(string Work, bool? LargePrint, decimal? ExtraTime, DueWish? Due)
{
    /// <summary>What of it is not this student's: exercises of a set by their ids, criteria of bench work by their names.</summary>
    public IReadOnlyList<string> LeavesOut { get; init; } = [];
}
