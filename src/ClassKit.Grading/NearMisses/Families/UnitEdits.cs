using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Answers;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>
/// A step from the unit of a cell to another of its kind where none belongs. Where the whole answer is in another unit, the judge says so
/// without a search.
/// </summary>
internal static class UnitEdits
{
    private const int Hundred = 100;

    /// <summary>Steps that people take without being asked; others only where the sheet has both units.</summary>
    private static readonly HashSet<(string From, string To)> Usual =
    [
        ("g", "kg"),
        ("kg", "g"),
        ("ml", "l"),
        ("l", "ml"),
        ("oz", "lb"),
        ("lb", "oz"),
        ("min", "h"),
        ("h", "min"),
        ("s", "min"),
        ("min", "s"),
        ("°C", "°F"),
        ("°F", "°C"),
    ];

    public static IEnumerable<Neighbour> At(Place place, Sheet sheet) =>
        place.Node is NameNode name && sheet.Find(name.Name) is { } quantity
            ? sheet.Steps(quantity).Select(step => Of(place, quantity, step.To, step.Take(name)))
            : [];

    /// <summary>What somebody may do to a quantity of a sheet.</summary>
    public static IEnumerable<UnitStep> Steps(SheetQuantity quantity, IReadOnlyList<SheetQuantity> sheet) =>
        quantity.Unit.IsPercent
            ?
            [
                new("", name => Tree.Binary(BinaryOperator.Multiply, name, Tree.Number(Hundred))),
                new("", name => Tree.Binary(BinaryOperator.Divide, name, Tree.Number(Hundred))),
            ]
            : WrittenUnits
                .Others(quantity.Unit)
                .Select(other => other.Unit)
                .Where(other => Usual.Contains((quantity.Unit.Sign, other.Sign)) || sheet.Any(one => one.Unit == other))
                .Select(other => new UnitStep(other.Sign, Converting(quantity.Unit, other)));

    private static Neighbour Of(Place place, SheetQuantity quantity, string other, FormulaNode written) =>
        new(place.Put(written), EditFamily.OtherUnit, () =>
            [new KeyEdit.OtherUnit(quantity.Id, Tree.Text(written), quantity.Unit.Sign, other)]
        );

    private static Func<FormulaNode, FormulaNode> Converting(Unit from, Unit to)
    {
        var into = WrittenUnits.Between(from, to)!;
        var offset = into.Of(0);
        var factor = into.Of(1) - offset;
        var (times, by, put) = (Plain(factor), Plain(1 / factor), Plain(offset));
        if (offset == 0)
            return factor >= 1
                ? name => Tree.Binary(BinaryOperator.Multiply, name, Tree.Number(times))
                : name => Tree.Binary(BinaryOperator.Divide, name, Tree.Number(by));
        return (from.Sign, to.Sign) switch
        {
            ("°F", "°C") => name =>
                Tree.Binary(BinaryOperator.Divide, Tree.Binary(BinaryOperator.Subtract, name, Tree.Number(32)), Tree.Number(1.8)),
            ("°C", "°F") => name =>
                Tree.Binary(BinaryOperator.Add, Tree.Binary(BinaryOperator.Multiply, name, Tree.Number(1.8)), Tree.Number(32)),
            _ => name => Sum(factor == 1 ? name : Tree.Binary(BinaryOperator.Multiply, name, Tree.Number(times)), put),
        };
    }

    private static BinaryNode Sum(FormulaNode quantity, double offset) =>
        Tree.Binary(offset < 0 ? BinaryOperator.Subtract : BinaryOperator.Add, quantity, Tree.Number(Math.Abs(offset)));

    /// <summary>Without the last bits of a division, which nobody typed.</summary>
    private static double Plain(double number) =>
        double.Parse(
            number.ToString("G12", System.Globalization.CultureInfo.InvariantCulture),
            System.Globalization.CultureInfo.InvariantCulture
        );
}
