using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;
using ClassKit.ItemBanks.Items;

namespace ClassKit.ItemBanks.Packages;

/// <summary>Exercises as items of the open standard 1EdTech QTI 3.0, for programs that deliver tests.</summary>
public sealed class ItemBank
{
    /// <summary>The most variants of one exercise.</summary>
    public const int MostVariants = 999;

    private const int Samples = 100;

    private readonly string _identifier;
    private readonly List<BankItem> _items = [];
    private readonly List<BankNote> _notes = [];

    private ItemBank(string identifier) => _identifier = identifier;

    /// <summary>How many items are in it.</summary>
    public int Items => _items.Count;

    /// <summary>What the instructor should know.</summary>
    public IReadOnlyList<BankNote> Notes => _notes;

    /// <summary>
    /// A zip with a manifest and an item in each file, made anew each time it is asked for; the same bytes for the same exercises and seed.
    /// </summary>
    public byte[] Package => ItemPackage.Write(_identifier, _items);

    /// <summary>One item a variant, with fixed numbers.</summary>
    /// <param name="identifier">Names the package; as ids of lessons are.</param>
    /// <param name="exercises">At least one.</param>
    /// <param name="variants">How many variants of each, 1 to <see cref="MostVariants"/>.</param>
    /// <param name="seed">Decides the draws.</param>
    /// <param name="watcher">Told before the first variant and after each; null for nobody.</param>
    public static ItemBank OfVariants(
        string identifier,
        IReadOnlyList<Exercise> exercises,
        int variants,
        ulong seed,
        IProgress<DrawProgress>? watcher = null
    )
    {
        ArgumentNullException.ThrowIfNull(exercises);
        ArgumentOutOfRangeException.ThrowIfLessThan(variants, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(variants, MostVariants);
        var bank = new ItemBank(identifier);
        foreach (var (exercise, drawn) in Draw(exercises, variants, seed, watcher))
        {
            if (drawn.Count < variants)
                bank._notes.Add(new BankNote.FewerVariants(exercise, drawn.Count, variants));
            bank.Add(exercise, drawn);
        }
        return bank;
    }

    /// <summary>
    /// One item an exercise, whose numbers the delivering program draws; where the standard cannot express an exercise, variants of it.
    /// </summary>
    public static ItemBank OfTemplates(
        string identifier,
        IReadOnlyList<Exercise> exercises,
        int variants,
        ulong seed,
        IProgress<DrawProgress>? watcher = null
    )
    {
        ArgumentNullException.ThrowIfNull(exercises);
        var bank = new ItemBank(identifier);
        foreach (var (exercise, drawn) in Draw(exercises, Math.Max(variants, Samples), seed, watcher))
        {
            if (TemplateItem.Write(exercise, drawn) is { } template)
            {
                bank._items.Add(new(exercise.Id, exercise, () => template));
                continue;
            }
            bank._notes.Add(new BankNote.NoTemplate(exercise));
            bank.Add(exercise, drawn.Take(variants));
        }
        return bank;
    }

    private void Add(Exercise exercise, IEnumerable<Variant> variants)
    {
        foreach (var (at, variant) in variants.Index())
        {
            var identifier = Identifiers.Item(exercise, at + 1);
            _items.Add(new(identifier, exercise, () => VariantItem.Write(variant, identifier)));
        }
    }

    private static IEnumerable<(Exercise Exercise, List<Variant> Drawn)> Draw(
        IReadOnlyList<Exercise> exercises,
        int count,
        ulong seed,
        IProgress<DrawProgress>? watcher
    )
    {
        var (done, total) = (0, exercises.Count * count);
        watcher?.Report(new(done, total));
        foreach (var exercise in exercises)
        {
            var generator = VariantGenerator.For(exercise);
            var random = SeededDraws.For(seed, "items", exercise.Id);
            var seen = new HashSet<string>();
            var drawn = new List<Variant>();
            while (
                drawn.Count < count
                && generator.Draw(random, variant => seen.Add(VariantKey.Of(exercise, variant.Givens))).Variant is { } variant
            )
            {
                drawn.Add(variant);
                watcher?.Report(new(++done, total));
            }
            yield return (exercise, drawn);
        }
    }
}
