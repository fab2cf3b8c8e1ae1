using System.Diagnostics;
using ClassKit.ItemBanks.Packages;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Items;

/// <summary>What an instructor is told of a bank of items, one sentence each.</summary>
public static class BankNoteWords
{
    /// <summary>The sentence.</summary>
    public static string Of(BankNote note) =>
        note switch
        {
            BankNote.FewerVariants(var exercise, var drawn, var wanted) =>
                $"{exercise.Title}: {Counted.Of(drawn, "item")} and not {wanted}, since its givens allow no more variants.",
            BankNote.NoTemplate(var exercise) =>
                $"{exercise.Title}: its keys cannot be expressed in the standard, so it goes in as variants.",
            _ => throw new UnreachableException($"No words for {note}."),
        };
}
