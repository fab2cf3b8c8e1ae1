namespace ClassKit.Exercises.Cohorts;

/// <summary>A column of a roster's file that was taken for something.</summary>
/// <param name="Title">As the file names it.</param>
/// <param name="As">What it was taken for.</param>
public sealed record TakenColumn(string Title, RosterField As);
