using ClassKit.Exercises.Identity;

namespace ClassKit.Exercises.Dealing;

/// <summary>How workbooks and sheets say which deal they are from. A deal without identity says nothing.</summary>
public static class DealText
{
    private const string Between = " · ";

    /// <summary>The code behind other words, for a line at the top of a sheet: <c> · deal K7M-4RX9</c>.</summary>
    public static string Behind(DealtClass dealt) => Of(dealt) is { } code ? $"{Between}deal {code}{Again(dealt)}" : "";

    /// <summary>The foot of every printed page.</summary>
    public static string Footer(DealtClass dealt) => Of(dealt) is { } code ? $"Deal {code}{Again(dealt)}" : "";

    /// <summary>The code in its own cell, and what was dealt for if it is not handed in.</summary>
    public static string Cell(DealtClass dealt) =>
        $"{Of(dealt)}{Again(dealt)}{(PurposeOf(dealt.Purpose) is { } purpose ? Between + purpose : "")}";

    /// <summary>What a deal is for, read from its cell.</summary>
    public static DealPurpose PurposeIn(string cell) =>
        Enum.GetValues<DealPurpose>()
            .FirstOrDefault(
                purpose => PurposeOf(purpose) is { } words && cell.EndsWith(words, StringComparison.Ordinal),
                DealPurpose.Graded
            );

    private static string Again(DealtClass dealt) => dealt.Replaces is { } replaced ? $"{Between}resit of {replaced.Code}" : "";

    private static string? Of(DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        return dealt.Identity?.Code;
    }

    private static string? PurposeOf(DealPurpose purpose) =>
        purpose switch
        {
            DealPurpose.Graded => null,
            DealPurpose.Practice => "practice, not handed in",
            DealPurpose.FollowUp => "follow-up practice",
            DealPurpose.Rehearsal => "rehearsal",
        };
}
