using System.Xml.Linq;
using ClassKit.Exercises.Authoring;
using ClassKit.ItemBanks.Vocabulary;

namespace ClassKit.ItemBanks.Items;

/// <summary>The frame that every item has.</summary>
internal static class Item
{
    /// <summary>Puts an item together in the order that the standard asks for.</summary>
    public static XElement Of(
        string identifier,
        Exercise exercise,
        IEnumerable<XElement> responses,
        Marking marking,
        IEnumerable<XElement> template,
        XElement body
    ) =>
        Qti.Of(
            "assessment-item",
            Qti.With("identifier", identifier),
            Qti.With("title", exercise.Title),
            Qti.With("adaptive", "false"),
            Qti.With("time-dependent", "false"),
            new XAttribute(XNamespace.Xml + "lang", "en"),
            responses,
            marking.Outcomes(),
            template,
            body,
            marking.Processing(),
            marking.Feedback()
        );

    /// <summary>Declares what a student enters for a part.</summary>
    public static XElement Response(Part part, double? correct) =>
        Qti.Of(
            "response-declaration",
            Qti.With("identifier", Identifiers.Response(part)),
            Qti.With("cardinality", "single"),
            Qti.With(
                "base-type",
                part.InWords is not null ? Qti.String
                    : part.Choice is null ? Qti.Float
                    : Qti.Identifier
            ),
            part.InWords is null && correct is { } value
                ? Qti.Of(
                    "correct-response",
                    Qti.Of("value", part.Choice is { From: var list } ? Identifiers.Option(list.Find(value)!) : Qti.Text(value))
                )
                : null
        );
}
