using System.Globalization;
using System.Xml.Linq;
using ClassKit.Exercises;

namespace ClassKit.ItemBanks;

/// <summary>Exercises as items of the open standard 1EdTech QTI 3.0, for programs that deliver tests.</summary>
/// <param name="Package">A zip with a manifest and an item in each file; the same bytes for the same exercises and seed.</param>
/// <param name="Items">How many items are in it.</param>
/// <param name="Notes">What the instructor should know, one sentence each.</param>
public sealed record ItemBank(byte[] Package, int Items, IReadOnlyList<string> Notes)
{
    /// <summary>The most variants of one exercise.</summary>
    public const int MostVariants = 999;

    private const int Samples = 100;

    /// <summary>One item a variant, with fixed numbers.</summary>
    /// <param name="identifier">Names the package; as ids of lessons are.</param>
    /// <param name="exercises">At least one.</param>
    /// <param name="variants">How many variants of each, 1 to <see cref="MostVariants"/>.</param>
    /// <param name="seed">Decides the draws.</param>
    public static ItemBank OfVariants(string identifier, IReadOnlyList<Exercise> exercises, int variants, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        ArgumentOutOfRangeException.ThrowIfLessThan(variants, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(variants, MostVariants);
        var notes = new List<string>();
        var items = exercises.SelectMany(exercise =>
        {
            var drawn = Draw(exercise, variants, seed);
            if (drawn.Count < variants)
                notes.Add(string.Create(CultureInfo.InvariantCulture, $"{exercise.Title}: {drawn.Count} items and not {variants}, since its givens allow no more variants."));
            return drawn.Select((variant, at) => Entry(Identifiers.Item(exercise, at + 1), id => VariantItem.Write(variant, id)));
        }).ToList();
        return Pack(identifier, items, notes);
    }

    /// <summary>One item an exercise, whose numbers the delivering program draws; where the standard cannot express an exercise, variants of it.</summary>
    public static ItemBank OfTemplates(string identifier, IReadOnlyList<Exercise> exercises, int variants, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        var notes = new List<string>();
        var items = exercises.SelectMany(exercise =>
        {
            var samples = Draw(exercise, Math.Max(variants, Samples), seed);
            if (TemplateItem.Write(exercise, samples) is { } template) return [(exercise.Id, template)];
            notes.Add($"{exercise.Title}: its keys cannot be expressed in the standard, so it goes in as variants.");
            return samples.Take(variants).Select((variant, at) => Entry(Identifiers.Item(exercise, at + 1), id => VariantItem.Write(variant, id)));
        }).ToList();
        return Pack(identifier, items, notes);
    }

    private static ItemBank Pack(string identifier, List<(string Identifier, XElement Item)> items, List<string> notes) =>
        new(ItemPackage.Write(identifier, items), items.Count, notes);

    private static (string Identifier, XElement Item) Entry(string identifier, Func<string, XElement> write) => (identifier, write(identifier));

    private static List<Variant> Draw(Exercise exercise, int count, ulong seed)
    {
        var generator = VariantGenerator.For(exercise);
        var random = SeededDraws.For(seed, "items", exercise.Id);
        var seen = new HashSet<string>();
        var drawn = new List<Variant>();
        while (drawn.Count < count && generator.Draw(random, variant => seen.Add(VariantKey.Of(exercise, variant.Givens))).Variant is { } variant)
            drawn.Add(variant);
        return drawn;
    }
}
