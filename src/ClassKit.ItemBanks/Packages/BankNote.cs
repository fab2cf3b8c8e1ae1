using ClassKit.Exercises.Authoring;

namespace ClassKit.ItemBanks.Packages;

/// <summary>What an instructor should know of a bank that was made.</summary>
public abstract record BankNote
{
    private BankNote() { }

    /// <summary>The givens of an exercise allow fewer variants than were asked for.</summary>
    /// <param name="Exercise">The exercise.</param>
    /// <param name="Drawn">How many there are.</param>
    /// <param name="Wanted">How many were asked for.</param>
    public sealed record FewerVariants(Exercise Exercise, int Drawn, int Wanted) : BankNote;

    /// <summary>The standard cannot express an exercise's keys, so that it went in as variants with fixed numbers.</summary>
    /// <param name="Exercise">The exercise.</param>
    public sealed record NoTemplate(Exercise Exercise) : BankNote;
}
