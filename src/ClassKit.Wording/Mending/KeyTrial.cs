using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;

namespace ClassKit.Wording.Mending;

/// <summary>
/// Whether a formula is a part's key, whatever it looks like: by what both give for inputs out of the exercise's ranges, with right
/// answers before. No advice is given that was not tried so.
/// </summary>
internal sealed class KeyTrial
{
    /// <summary>Two formulas of a sheet that give the same for so many inputs are one.</summary>
    private const int Most = 8;
    private const int Fewest = 3;

    /// <summary>The same of what is rounded, where few numbers come of many.</summary>
    private const int MostRounded = 60;
    private const double Same = 1e-9;

    // Steps through every range that meet no range's own step. Source: the golden ratio's multiples lie evenly (Weyl 1916).
    private const double Golden = 0.6180339887498949;

    private readonly List<(NamedValues Values, double Key)> _inputs = [];

    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    public KeyTrial(Exercise exercise, Part part)
    {
        var most = Rounds(part.Key.Root) ? MostRounded : Most;
        for (var input = 0; input < most; input++)
        {
            var names = KeyValues.Names(
                exercise.Givens.Index().ToDictionary(given => given.Item.Id, given => Drawn(given.Item, given.Index, input))
            );
            var values = new NamedValues(names);
            foreach (var before in exercise.Parts.TakeWhile(other => other.Id != part.Id).Where(other => other.IsNumber))
            {
                if (values.Number(before.Key.Shape) is { } number)
                    names[before.Id] = CellValue.FromNumber(number);
            }
            if (values.Number(part.Key.Shape) is { } key)
                _inputs.Add((values, key));
        }
    }

    private static bool Rounds(FormulaNode node) => node is CallNode || node.Children().Any(Rounds);

    private static decimal Drawn(Given given, int row, int input)
    {
        var along = (input + 1) * Golden * (row + 2);
        return given.ValueAt((int)((along - Math.Floor(along)) * given.Count));
    }

    /// <summary>True if it is the key.</summary>
    public bool IsKey(FormulaNode tree) =>
        _inputs.Count >= Fewest
        && _inputs.TrueForAll(input =>
            input.Values.Number(tree) is { } value && Math.Abs(value - input.Key) <= Same * Math.Max(Math.Abs(input.Key), 1e-6)
        );
}
