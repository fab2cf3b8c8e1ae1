using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses;

/// <summary>The wrong formulas that are two of the likelier edits away, by what they give for one input, so that an answer needs no search.</summary>
internal sealed class SecondEdits
{
    /// <summary>How many first edits are followed by a second one: what there are more of in a key, is the less likely.</summary>
    private const int MostFirst = 48;

    private const int MostSecond = 6000;

    /// <summary>Numbers as near as this have the same key or neighbouring ones.</summary>
    private const double KeysPerUnit = 1e7;

    private readonly Dictionary<long, List<(Neighbour One, Neighbour Other)>> _byValue = [];

    /// <param name="first">The edits to begin from.</param>
    /// <param name="sheet">What can be used.</param>
    /// <param name="input">The input that they are held against first.</param>
    /// <param name="names">The same as names.</param>
    public SecondEdits(IReadOnlyList<Neighbour> first, IReadOnlyList<SheetQuantity> sheet, Variant input, IReadOnlyDictionary<string, CellValue> names)
    {
        Input = input;
        var values = new NamedColumns([names], SearchBudget.OneFormula);
        foreach (var (one, other) in first.Where(one => one.Family < EditFamily.Doubled).Take(MostFirst).SelectMany(one => Next(one, sheet, values)).Take(MostSecond))
        {
            if (values.Spent > SearchBudget.OneKey) break;
            if (values.Numbers(other.Root) is not [var value] || value == 0) continue;
            var key = KeyOf(value);
            if (!_byValue.TryGetValue(key, out var alike)) _byValue[key] = alike = [];
            alike.Add((one, other));
        }
    }

    /// <summary>What the second edits leave of the first one's formula need not be worked out again.</summary>
    private static IEnumerable<(Neighbour One, Neighbour Other)> Next(Neighbour one, IReadOnlyList<SheetQuantity> sheet, NamedColumns values)
    {
        values.Keep(one.Root);
        return Neighbours.Of(one.Root, sheet).Where(other => other.Family <= EditFamily.Doubled).Select(other => (one, other));
    }

    /// <summary>The input for which a formula's value is to be looked up.</summary>
    public Variant Input { get; }

    /// <summary>Those that give a value, in the order in which they are told.</summary>
    public IEnumerable<Neighbour> Giving(double value) => value == 0 ? [] : Enumerable.Range(-1, 3).SelectMany(near => _byValue.GetValueOrDefault(KeyOf(value) + near, [])).Select(two => After(two.One, two.Other));

    private static Neighbour After(Neighbour one, Neighbour other) => new(other.Root, EditFamily.Two, () => [.. one.Say(), .. other.Say()]);

    private static long KeyOf(double value) => (long)Math.Round(Math.Log(Math.Abs(value)) * KeysPerUnit, MidpointRounding.AwayFromZero);
}
