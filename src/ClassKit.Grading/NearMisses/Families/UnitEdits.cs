using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Answers;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>A step from the unit of a cell to another of its kind where none belongs. Where the whole answer is in another unit, the judge says so without a search.</summary>
internal static class UnitEdits
{
    private const int Hundred = 100;

    /// <summary>Steps that people take without being asked; others only where the sheet has both units.</summary>
    private static readonly HashSet<(string From, string To)> Usual =
        [("g", "kg"), ("kg", "g"), ("ml", "l"), ("l", "ml"), ("oz", "lb"), ("lb", "oz"), ("min", "h"), ("h", "min"), ("s", "min"), ("min", "s"), ("°C", "°F"), ("°F", "°C")];

    public static IEnumerable<Neighbour> At(Place place, IReadOnlyList<SheetQuantity> sheet)
    {
        if (place.Node is not NameNode name || sheet.FirstOrDefault(one => string.Equals(one.Id, name.Name, StringComparison.OrdinalIgnoreCase)) is not { } quantity) return [];
        return AnswerUnit.IsPercent(quantity.Unit)
            ? [Of(place, quantity, "", Tree.Binary(BinaryOperator.Multiply, name, Tree.Number(Hundred))), Of(place, quantity, "", Tree.Binary(BinaryOperator.Divide, name, Tree.Number(Hundred)))]
            : AnswerUnits.Others(quantity.Unit).Where(other => Usual.Contains((quantity.Unit, other)) || sheet.Any(one => one.Unit == other)).Select(other => Of(place, quantity, other, Converted(name, quantity.Unit, other)));
    }

    private static Neighbour Of(Place place, SheetQuantity quantity, string other, FormulaNode written) =>
        new(place.Put(written), EditFamily.OtherUnit, () => [new KeyEdit.OtherUnit(quantity.Id, Tree.Text(written), quantity.Unit, other)]);

    private static BinaryNode Converted(FormulaNode quantity, string from, string to)
    {
        var offset = AnswerUnits.Convert(0, from, to);
        var factor = AnswerUnits.Convert(1, from, to) - offset;
        if (offset == 0) return factor >= 1 ? Tree.Binary(BinaryOperator.Multiply, quantity, Tree.Number(Plain(factor))) : Tree.Binary(BinaryOperator.Divide, quantity, Tree.Number(Plain(1 / factor)));
        return (from, to) switch
        {
            ("°F", "°C") => Tree.Binary(BinaryOperator.Divide, Tree.Binary(BinaryOperator.Subtract, quantity, Tree.Number(32)), Tree.Number(1.8)),
            ("°C", "°F") => Tree.Binary(BinaryOperator.Add, Tree.Binary(BinaryOperator.Multiply, quantity, Tree.Number(1.8)), Tree.Number(32)),
            _ => Sum(factor == 1 ? quantity : Tree.Binary(BinaryOperator.Multiply, quantity, Tree.Number(Plain(factor))), Plain(offset)),
        };
    }

    private static BinaryNode Sum(FormulaNode quantity, double offset) =>
        Tree.Binary(offset < 0 ? BinaryOperator.Subtract : BinaryOperator.Add, quantity, Tree.Number(Math.Abs(offset)));

    /// <summary>Without the last bits of a division, which nobody typed.</summary>
    private static double Plain(double number) => double.Parse(number.ToString("G12", System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);
}
