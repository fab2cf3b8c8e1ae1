using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.NearMisses.Families;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses;

/// <summary>
/// The wrong formulas that are two of the likelier edits away, by what they give for one input, so that an answer needs no search.
/// </summary>
/// <remarks>Of thousands a class meets a few. Only their values are kept, and those that are met are made again.</remarks>
internal sealed class SecondEdits
{
    /// <summary>How many first edits are followed by a second one: what there are more of in a key, is the less likely.</summary>
    private const int MostFirst = 48;

    private const int MostSecond = 6000;

    private readonly List<Neighbour> _first;
    private readonly Sheet _sheet;
    private readonly bool _keepsAll;
    private readonly ValueIndex _values = new(MostSecond);

    // Where in the index what follows each first edit begins.
    private readonly List<int> _begins = [];

    /// <param name="first">The edits to begin from.</param>
    /// <param name="sheet">What can be used.</param>
    /// <param name="input">The input that they are held against first.</param>
    /// <param name="names">The same as names.</param>
    /// <param name="keepsAll">False to leave out those that lose half of the method.</param>
    public SecondEdits(
        IReadOnlyList<Neighbour> first,
        Sheet sheet,
        Variant input,
        IReadOnlyDictionary<string, CellValue> names,
        bool keepsAll
    )
    {
        (Input, _sheet, _keepsAll, _first) = (
            input,
            sheet,
            keepsAll,
            [.. first.Where(one => one.Family < EditFamily.Doubled).Take(MostFirst)]
        );
        var columns = new NamedColumns([names], SearchBudget.OneFormula);
        var place = 0;
        foreach (var one in _first)
        {
            _begins.Add(place);
            // What the second edit leaves of the first one's formula need not be worked out again.
            columns.Keep(one.Root);
            foreach (var other in After(one).Take(MostSecond - place))
            {
                if (columns.Spent > SearchBudget.OneKey)
                    return;
                if (columns.Numbers(other.Root) is [var value])
                    _values.Add(place, value);
                place++;
            }
        }
    }

    /// <summary>The input for which a formula's value is to be looked up.</summary>
    public Variant Input { get; }

    /// <summary>Those that give a value, in the order in which they are told.</summary>
    public IEnumerable<Neighbour> Giving(double value) => _values.Of(value).Select(At);

    private Neighbour At(int place)
    {
        var first = _begins.FindLastIndex(begin => begin <= place);
        var other = After(_first[first]).ElementAt(place - _begins[first]);
        return new(other.Root, EditFamily.Two, () => [.. _first[first].Edits, .. other.Edits]);
    }

    private IEnumerable<Neighbour> After(Neighbour one) => Neighbours.Of(one.Root, _sheet, last: EditFamily.Doubled, _keepsAll);
}
