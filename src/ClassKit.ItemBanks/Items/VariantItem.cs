using System.Xml.Linq;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Lettering;
using ClassKit.Exercises.Texts;
using ClassKit.Exercises.Variants;
using ClassKit.ItemBanks.Vocabulary;

namespace ClassKit.ItemBanks.Items;

/// <summary>One variant of an exercise as an item with fixed numbers. It keeps every promise made of the variant.</summary>
internal static class VariantItem
{
    public static XElement Write(Variant variant, string identifier)
    {
        var exercise = variant.Exercise;
        var names = KeyValues.Names(variant.Givens, variant.Answers);
        var marking = new Marking(
            exercise,
            part => Closeness.Around(part, variant.Answers[part.Id]),
            (part, misconception) =>
                KeyValues.Number(misconception.Formula, names) is { } wrong ? (Expected(part, wrong), Closeness.Around(part, wrong)) : null
        );
        return Item.Of(
            identifier,
            exercise,
            exercise.Parts.Select(part => Item.Response(part, variant.Answers[part.Id] * AnswerScale.Of(part))),
            marking,
            [],
            ItemBody.Write(
                exercise,
                given => GivenText.Number(given, variant.Givens[given.Id]),
                list => LetteredOptions.Of(exercise, list, variant.Givens).InOrder,
                part => SeenText.Of(part, variant.Answers[part.Id])
            )
        );
    }

    private static XElement Expected(Part part, double wrong) =>
        part.Choice is { From: var list }
            ? Qti.Of("base-value", Qti.With("base-type", Qti.Identifier), Identifiers.Option(list.Find(wrong)!))
            : Qti.Number(wrong * AnswerScale.Of(part));
}
