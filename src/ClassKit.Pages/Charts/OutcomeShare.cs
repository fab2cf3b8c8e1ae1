using ClassKit.Grading.Results;
using ClassKit.Wording.Outcomes;

namespace ClassKit.Pages.Charts;

/// <summary>
/// One share of a bar of outcomes: right is darkest, and the less was understood the lighter, to white where nothing is. What is rare and
/// says nothing of understanding is one share behind them. Without colour a pattern tells them apart, see <c>OutcomePatterns.razor</c>.
/// </summary>
/// <param name="Name">The end of its class and of its pattern's id.</param>
/// <param name="Outcomes">The outcomes in it.</param>
internal sealed record OutcomeShare(string Name, IReadOnlyList<Outcome> Outcomes)
{
    private const string Right = "right";
    private const string Nothing = "nothing";

    /// <summary>All shares, in the order in which bars show them.</summary>
    public static IReadOnlyList<OutcomeShare> All { get; } =
    [
        new(Right, [Outcome.Sound]),
        new("followed", [Outcome.FollowThrough]),
        new("typed", [Outcome.ValueOnly]),
        new("turn", [Outcome.Misconception]),
        new("wrong", [Outcome.Incorrect]),
        new(Nothing, [Outcome.Blank]),
        new("other", [Outcome.Unreadable, Outcome.Unsupported]),
    ];

    /// <summary>True if its numbers are set in inverse.</summary>
    public bool IsDark => Name == Right;

    /// <summary>The classes of its rectangle.</summary>
    public string Class =>
        Name switch
        {
            Right => "seg fill-accent",
            Nothing => "seg fill-paper",
            _ => $"seg share-{Name}",
        };

    /// <summary>The pattern over it where a printer has no colour, on which a number needs a plate; null for none.</summary>
    public string? Pattern => Name is Right or Nothing ? null : $"url(#fill-{Name})";

    /// <summary>How many of a bar are in it.</summary>
    public int Of(OutcomeBar bar) => Outcomes.Sum(outcome => bar.Counts[outcome]);

    /// <summary>What the key calls it: of outcomes that share it, those that some bar has.</summary>
    public string Called(IReadOnlyList<OutcomeBar> bars) =>
        Phrases
            .Sentence(
                string.Join(
                    " or ",
                    Outcomes
                        .Where(outcome => bars.Any(bar => bar.Counts[outcome] > 0))
                        .Select(outcome => OutcomeText.Brief(outcome).ToLowerInvariant())
                )
            )
            .TrimEnd('.');
}
