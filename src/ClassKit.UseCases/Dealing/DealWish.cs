using System.Globalization;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;

namespace ClassKit.UseCases.Dealing;

/// <summary>What is wanted of a deal.</summary>
/// <param name="Set">Which exercises.</param>
/// <param name="IsSpread">True for different sets of equal weight, false for the same set for everyone.</param>
/// <param name="Seed">Decides every draw.</param>
public sealed record DealWish(SetWish Set, bool IsSpread, ulong Seed)
{
    /// <summary>
    /// What stands at the top of workbooks and pages; null for the lesson's title, and for exercises without a lesson what an earlier deal
    /// says that is added to or sat again, else the folder's name.
    /// </summary>
    public string? Title { get; init; }

    /// <summary>What it is for.</summary>
    public DealPurpose Purpose { get; init; }

    /// <summary>True for all exercises on one sheet of the workbook, false for a sheet each.</summary>
    public bool OneSheet { get; init; }

    /// <summary>
    /// When it is to be due, on the class's clocks; null for what an earlier deal says that is added to, else at any time.
    /// </summary>
    public DueWish? Due { get; init; }

    /// <summary>True if different sets are to be balanced by what earlier classes earned.</summary>
    public bool IsBalanced { get; init; }

    /// <summary>How sets are chosen where students have different ones; see <see cref="DealSettings.Choice"/>.</summary>
    internal string Choice =>
        !IsSpread
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $"spread; exercises {string.Join(' ', Set.Exercises)}; skills {string.Join(", ", Set.Skills)}; levels {string.Join(' ', Set.Levels)}; minutes {Set.Minutes}; points {Set.Points}{(IsBalanced ? "; balanced" : "")}"
            );
}
