namespace ClassKit.Terms.Difficulty;

/// <summary>A part of an exercise, wherever and whenever it was asked.</summary>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Part">The part's id within it.</param>
public sealed record AskedPart(string Exercise, string Part);
