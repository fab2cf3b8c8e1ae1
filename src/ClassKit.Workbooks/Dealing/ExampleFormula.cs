using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Workbooks.Dealing;

/// <summary>A formula that shows how cells are put into formulas, and answers nothing that was dealt.</summary>
/// <param name="Words">What it works out, in words, with the names of its cells in braces.</param>
/// <param name="Formula">Over those names.</param>
internal sealed record ExampleFormula(TextTemplate Words, CellFormula Formula)
{
    /// <summary>Two cells where no practice sheet has anything.</summary>
    private static readonly Dictionary<string, string> Cells = new() { ["length"] = "H7", ["width"] = "H8" };

    private static readonly ExampleFormula[] Known =
    [
        new("the way around a tray, with its length in {length} and its width in {width}", CellFormula.Of("=2*(length+width)")),
        new(
            "the way from corner to corner of a tray, with its length in {length} and its width in {width}",
            CellFormula.Of("=SQRT(length^2+width^2)")
        ),
        new(
            "how much longer than wide a tray is, in widths, with its length in {length} and its width in {width}",
            CellFormula.Of("=length/width-1")
        ),
    ];

    /// <summary>The first one whose method is no part of what any of these exercises asks.</summary>
    public static ExampleFormula For(IEnumerable<Exercise> exercises)
    {
        var asked = exercises.SelectMany(exercise => exercise.Parts).Select(part => ShapeOf(part.Key)).ToHashSet(StringComparer.Ordinal);
        return Known.FirstOrDefault(example => !asked.Any(key => key.Contains(ShapeOf(example.Formula)[1..], StringComparison.Ordinal)))
            ?? Known[^1];
    }

    /// <summary>As a sentence's end: what it works out, and how.</summary>
    public string Text => $"{Words.Fill(place => Cells.GetValueOrDefault(place.Name))}, is {Formula.ReplaceNames(Cells.GetValueOrDefault)}";

    /// <summary>The formula with one name for whatever it is made of.</summary>
    private static string ShapeOf(CellFormula formula) => formula.ReplaceNames(_ => "x").ToString();
}
