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

    private readonly Dictionary<long, List<Neighbour>> _byValue = [];

    /// <param name="first">The edits to begin from.</param>
    /// <param name="sheet">What can be used.</param>
    /// <param name="input">The input that they are held against first.</param>
    /// <param name="names">The same as names.</param>
    public SecondEdits(IReadOnlyList<Neighbour> first, IReadOnlyList<SheetQuantity> sheet, Variant input, IReadOnlyDictionary<string, CellValue> names)
    {
        Input = input;
        var values = new NamedValues(names, SearchBudget.OneFormula);
        foreach (var neighbour in first.Where(one => one.Family < EditFamily.Doubled).Take(MostFirst)
            .SelectMany(one => Neighbours.Of(one.Root, sheet).Where(other => other.Family <= EditFamily.Doubled).Select(other => After(one, other))).Take(MostSecond))
        {
            if (values.Spent > SearchBudget.OneKey) break;
            if (values.Number(neighbour.Root) is not { } value || value == 0) continue;
            var key = KeyOf(value);
            if (!_byValue.TryGetValue(key, out var alike)) _byValue[key] = alike = [];
            alike.Add(neighbour);
        }
    }

    /// <summary>The input for which a formula's value is to be looked up.</summary>
    public Variant Input { get; }

    /// <summary>Those that give a value, in the order in which they are told.</summary>
    public IEnumerable<Neighbour> Giving(double value) => value == 0 ? [] : Enumerable.Range(-1, 3).SelectMany(near => _byValue.GetValueOrDefault(KeyOf(value) + near, []));

    private static Neighbour After(Neighbour one, Neighbour other) => new(other.Root, EditFamily.Two, () => [.. one.Say(), .. other.Say()]);

    private static long KeyOf(double value) => (long)Math.Round(Math.Log(Math.Abs(value)) * KeysPerUnit, MidpointRounding.AwayFromZero);
}
