using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Layout;
using ClassKit.ItemBanks.Vocabulary;
using Markdig;

namespace ClassKit.ItemBanks.Items;

/// <summary>What a student sees of an item: the problem, the givens as a table, and a field for every part.</summary>
internal static partial class ItemBody
{
    // Private-use characters pass through Markdown untouched and stand in no problem text.
    private const char Open = '\uE000';
    private const char Close = '\uE001';
    private const int FieldLength = 12;
    private const string Lines = "6";

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().UsePipeTables().Build();

    /// <summary>Writes the body.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="value">What to show for a given's number: a text or an element.</param>
    /// <param name="order">The options of a list in the order in which they stand.</param>
    /// <param name="seen">What is looked at before choosing, in words; null for nothing.</param>
    public static XElement Write(
        Exercise exercise,
        Func<Given, object> value,
        Func<OptionList, IReadOnlyList<ChoiceOption>> order,
        Func<Part, string?> seen
    ) =>
        Qti.Of(
            "item-body",
            Problem(exercise, value),
            Picture(exercise),
            Givens(exercise, value),
            exercise.Parts.Select(part =>
                part.InWords is not null ? InWords(part)
                : part.Choice is { From: var list } ? Choice(part, order(list), seen(part))
                : Question(part)
            )
        );

    private static XElement Problem(Exercise exercise, Func<Given, object> value)
    {
        var marked = ProblemText.Fill(exercise, given =>
            string.Create(CultureInfo.InvariantCulture, $"{Open}{exercise.Givens.ToList().IndexOf(given)}{Close}")
        );
        var problem = Qti.Html(
            "div",
            XElement.Parse($"<div>{Markdown.ToHtml(marked, Pipeline)}</div>", LoadOptions.PreserveWhitespace).Nodes().Select(InSpace)
        );
        foreach (
            var text in problem
                .DescendantNodes()
                .OfType<XText>()
                .Where(text => text.Value.Contains(Open, StringComparison.Ordinal))
                .ToList()
        )
            text.ReplaceWith(
                Mark()
                    .Split(text.Value)
                    .Select(
                        (piece, at) =>
                            at % 2 == 0
                                ? (XNode)new XText(piece)
                                : WithUnit(exercise.Givens[int.Parse(piece, CultureInfo.InvariantCulture)], value)
                    )
            );
        return problem;
    }

    private static XElement? Picture(Exercise exercise) =>
        exercise.Picture is { } picture
            ? Qti.Html("p", Qti.Html("img", Qti.With("src", ItemPicture.FromItem(exercise)!), Qti.With("alt", picture.Shows)))
            : null;

    private static XElement WithUnit(Given given, Func<Given, object> value) =>
        Qti.Html("span", value(given), given.Unit.IsNone ? null : "\u00A0" + given.Unit.Sign);

    private static XElement? Givens(Exercise exercise, Func<Given, object> value) =>
        exercise.Givens.Count == 0
            ? null
            : Qti.Html(
                "table",
                Qti.Html("caption", "Given"),
                Qti.Html(
                    "tbody",
                    exercise.Givens.Select(given =>
                        Qti.Html(
                            "tr",
                            Qti.Html("th", Qti.With("scope", "row"), given.Label),
                            Qti.Html("td", value(given), given.Unit.IsNone ? null : "\u00A0" + given.Unit.Sign)
                        )
                    )
                )
            );

    /// <summary>Every part has its options with it, also where several share them: the standard's choices stand each by itself.</summary>
    private static XElement Choice(Part part, IReadOnlyList<ChoiceOption> options, string? seen) =>
        Qti.Of(
            "choice-interaction",
            Qti.With("response-identifier", Identifiers.Response(part)),
            Qti.With("shuffle", "true"),
            Qti.With("max-choices", "1"),
            Qti.Of("prompt", seen is null ? part.Ask : $"{part.Ask} {seen}"),
            options.Select(option => Qti.Of("simple-choice", Qti.With("identifier", Identifiers.Option(option)), option.Words))
        );

    /// <summary>Read by people; what they look for is for them alone.</summary>
    private static XElement InWords(Part part) =>
        Qti.Html(
            "div",
            Qti.Of(
                "rubric-block",
                Qti.With("view", "scorer"),
                Qti.With("use", "scoring"),
                Qti.Of("content-body", Qti.Html("p", part.InWords!.LookFor))
            ),
            Qti.Of(
                "extended-text-interaction",
                Qti.With("response-identifier", Identifiers.Response(part)),
                Qti.With("expected-lines", Lines),
                Qti.With("format", "plain"),
                Qti.Of("prompt", part.Ask)
            )
        );

    private static XElement Question(Part part) =>
        Qti.Html(
            "p",
            part.Ask + " ",
            Qti.Of(
                "text-entry-interaction",
                Qti.With("response-identifier", Identifiers.Response(part)),
                Qti.With("expected-length", FieldLength.ToString(CultureInfo.InvariantCulture))
            ),
            part.Unit.IsNone ? null : "\u00A0" + part.Unit.Sign
        );

    /// <summary>HTML parts of an item are in the item's own namespace.</summary>
    private static XNode InSpace(XNode node) =>
        node is XElement element
            ? new XElement(Qti.Space + element.Name.LocalName, element.Attributes(), element.Nodes().Select(InSpace))
            : node;

    [GeneratedRegex("\uE000([0-9]+)\uE001")]
    private static partial Regex Mark();
}
