namespace ClassKit.PracticeBank.Tests.Oracles;

/// <summary>What ClassKit.Baking makes of an exercise's givens.</summary>
/// <param name="Part">The part that asks for it.</param>
/// <param name="Value">In the part's unit; percent as a fraction.</param>
/// <param name="Within">How far a key may be off, as a share of the value: nearly nothing, or what the rounding of a constant in the
/// problem's text makes.</param>
internal readonly record struct KnownAnswer(string Part, double Value, double Within = 1e-9);
