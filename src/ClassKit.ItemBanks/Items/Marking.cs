using System.Xml.Linq;
using ClassKit.Exercises.Authoring;
using ClassKit.ItemBanks.Vocabulary;

namespace ClassKit.ItemBanks.Items;

/// <summary>How an item is marked: points for every part that is right, and the words that set a known wrong turn right.</summary>
internal sealed class Marking
{
    private readonly Exercise _exercise;
    private readonly Func<Part, Closeness> _closeness;
    private readonly Func<Part, Misconception, (XElement Value, Closeness Closeness)?> _wrong;

    /// <summary>Marking of an exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="closeness">How near an answer must be to the correct response.</param>
    /// <param name="wrong">What a wrong turn comes to, as an expression, and how near an answer must be to be taken for it; null if it
    /// comes to nothing.</param>
    public Marking(
        Exercise exercise,
        Func<Part, Closeness> closeness,
        Func<Part, Misconception, (XElement Value, Closeness Closeness)?> wrong
    )
    {
        _exercise = exercise;
        _closeness = closeness;
        _wrong = wrong;
    }

    /// <summary>The outcomes: score, highest score, and what is to be said of every part.</summary>
    public IEnumerable<XElement> Outcomes() =>
        [
            Outcome(Identifiers.Score, 0),
            Outcome(Identifiers.MostScore, Judged.Sum(part => part.Points)),
            .. _exercise.Parts.Where(part => part.InWords is not null).Select(ByPeople),
            .. Judged.Select(part =>
                Qti.Of(
                    "outcome-declaration",
                    Qti.With("identifier", Identifiers.Feedback(part)),
                    Qti.With("cardinality", "single"),
                    Qti.With("base-type", "identifier")
                )
            ),
        ];

    /// <summary>What happens when the answers are in.</summary>
    public XElement Processing() =>
        Qti.Of(
            "response-processing",
            Judged.Select(part =>
                Qti.Of(
                    "response-condition",
                    Qti.Of(
                        "response-if",
                        Holds(part, _closeness(part), Qti.Of("correct", Qti.With("identifier", Identifiers.Response(part)))),
                        Qti.Of(
                            "set-outcome-value",
                            Qti.With("identifier", Identifiers.Score),
                            Qti.Of("sum", Qti.Variable(Identifiers.Score), Qti.Number((double)part.Points))
                        ),
                        Say(part, Identifiers.Right)
                    ),
                    part.Misconceptions.Select(misconception =>
                        _wrong(part, misconception) is { } wrong
                            ? Qti.Of(
                                "response-else-if",
                                Holds(part, wrong.Closeness, wrong.Value),
                                Say(part, Identifiers.Wrong(part, misconception))
                            )
                            : null
                    )
                )
            )
        );

    /// <summary>The words themselves, each shown when its outcome says so.</summary>
    public IEnumerable<XElement> Feedback() =>
        Judged.SelectMany(part =>
            part.Misconceptions.Select(misconception => (Identifier: Identifiers.Wrong(part, misconception), misconception.Words))
                .Prepend((Identifier: Identifiers.Right, Words: "Right: " + part.Ask))
                .Select(feedback =>
                    Qti.Of(
                        "modal-feedback",
                        Qti.With("outcome-identifier", Identifiers.Feedback(part)),
                        Qti.With("identifier", feedback.Identifier),
                        Qti.With("show-hide", "show"),
                        Qti.Of("content-body", Qti.Html("p", feedback.Words))
                    )
                )
        );

    /// <summary>What was entered is near enough to a number, or is the option that was chosen.</summary>
    private static XElement Holds(Part part, Closeness closeness, XElement expected) =>
        part.Choice is null
            ? closeness.Holds(expected, Qti.Variable(Identifiers.Response(part)))
            : Qti.Of("match", expected, Qti.Variable(Identifiers.Response(part)));

    private IEnumerable<Part> Judged => _exercise.Parts.Where(part => part.InWords is null);

    /// <summary>The points that somebody gives for words. They are beside the score, which is what can be worked out here.</summary>
    private static XElement ByPeople(Part part) =>
        Qti.Of(
            "outcome-declaration",
            Qti.With("identifier", Identifiers.ByPeople(part)),
            Qti.With("cardinality", "single"),
            Qti.With("base-type", Qti.Float),
            Qti.With("normal-minimum", "0"),
            Qti.With("normal-maximum", Qti.Text((double)part.Points)),
            Qti.With("external-scored", "human")
        );

    private static XElement Say(Part part, string identifier) =>
        Qti.Of(
            "set-outcome-value",
            Qti.With("identifier", Identifiers.Feedback(part)),
            Qti.Of("base-value", Qti.With("base-type", "identifier"), identifier)
        );

    private static XElement Outcome(string identifier, decimal value) =>
        Qti.Of(
            "outcome-declaration",
            Qti.With("identifier", identifier),
            Qti.With("cardinality", "single"),
            Qti.With("base-type", Qti.Float),
            Qti.Of("default-value", Qti.Of("value", Qti.Text((double)value)))
        );
}
