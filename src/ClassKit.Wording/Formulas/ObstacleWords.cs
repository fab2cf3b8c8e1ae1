using System.Diagnostics;
using System.Globalization;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Formulas;

/// <summary>Why a formula has no value, or what led to its error value: words that stand in brackets behind what came of it.</summary>
public static class ObstacleWords
{
    /// <summary>The words, beginning small.</summary>
    public static string Of(Obstacle obstacle) =>
        obstacle switch
        {
            Obstacle.TooManySteps(var most) => string.Create(CultureInfo.InvariantCulture, $"more than {most} steps"),
            Obstacle.TooManyStepsTogether => "more steps than there may be for all cells together",
            Obstacle.ArrayTooLarge(var most) => string.Create(CultureInfo.InvariantCulture, $"an array of more than {most} cells"),
            Obstacle.ArrayBeyondSheet => "an array larger than a sheet",
            Obstacle.TooManyAreas(var most) => string.Create(CultureInfo.InvariantCulture, $"a union of more than {most} areas"),
            Obstacle.NestedTooDeeply => "formulas nested too deeply",
            Obstacle.Circle circle =>
                $"{(circle.IsIterated ? "the workbook computes circles by going round them, and " : "")}these cells depend on each other in a circle: {Cells(circle)}",
            Obstacle.MayBeMacro(var name) => $"the function {ShownName.Of(name)} may be a macro, which is not evaluated",
            Obstacle.UnknownFunction(var name) => $"the function {ShownName.Of(name)} is not evaluated",
            Obstacle.NoFunction(var name) => $"there is no function called {ShownName.Of(name)}",
            Obstacle.Arguments arguments => string.Create(
                CultureInfo.InvariantCulture,
                $"{arguments.Function} takes {Arity(arguments)}, not {arguments.Given}"
            ),
            Obstacle.ChangesEachTime(var function) => $"{function} gives another value each time",
            Obstacle.NoName(var name) => $"nothing is called {ShownName.Of(name)}",
            Obstacle.NameWithoutFormula(var name) => $"the name {ShownName.Of(name)} stands for no formula that can be read",
            Obstacle.NameOfItself(var name) => $"the name {ShownName.Of(name)} stands for itself",
            Obstacle.NoSheet(var sheet) => $"there is no sheet called {ShownName.Of(sheet)}",
            Obstacle.NoCells => "there are no cells to refer to here, only names",
            Obstacle.NoTables(var text) => $"there are no tables here, and `{ShownName.Of(text)}` refers to one",
            Obstacle.InNoTable(var text) => $"`{ShownName.Of(text)}` stands in no table",
            Obstacle.NoTable(var table) => $"there is no table called {ShownName.Of(table)}",
            Obstacle.NoColumn(var table, var text) => $"the table {ShownName.Of(table)} has no such column: `{ShownName.Of(text)}`",
            Obstacle.NoFormula(var cell, var error) when SyntaxWords.Unfinished(error) is { } lacks =>
                $"in {ShownName.Of(cell.ToString())} {lacks}",
            Obstacle.NoFormula(var cell, var error) =>
                $"{ShownName.Of(cell.ToString())} holds no formula that can be read: {SyntaxWords.Of(error)}",
            Obstacle.NotEvaluated(var what, var text) => $"{Of(what)} (`{ShownName.Of(text)}`) is not evaluated",
            Obstacle.NumberFormat(var code) => $"the number format {ShownName.Of(code)} is not evaluated",
            Obstacle.NumberedReference => "INDIRECT with references in the style R1C1 is not evaluated",
            Obstacle.FormulaCriterion => "a criterion that is a formula over the rows of a table is not evaluated",
            _ => throw new UnreachableException($"No words for {obstacle}."),
        };

    private static string Of(Construct construct) =>
        construct switch
        {
            Construct.TableReference => "a structured reference",
            Construct.SeveralSheets => "a reference through several sheets",
            Construct.OtherWorkbook => "a reference to another workbook",
            Construct.OtherWorkbooksFunction => "a function of another workbook",
            Construct.Macro => "a macro",
            Construct.Lambda => "LAMBDA",
            Construct.NewerError => "an error value of newer programs",
        };

    private static string Cells(Obstacle.Circle circle)
    {
        var cells = circle.Cells.Select(cell => ShownName.Of(cell.ToString())).ToList();
        return string.Join(" → ", [.. cells, .. cells.Count < circle.Length ? ["..."] : (string[])[], .. cells.Take(1)]);
    }

    private static string Arity(Obstacle.Arguments function) =>
        (function.Least, function.Most) switch
        {
            (var least, null) => string.Create(CultureInfo.InvariantCulture, $"at least {Counted.Of(least, "argument")}"),
            var (least, most) when least == most => Counted.Of(least, "argument"),
            var (least, most) => string.Create(CultureInfo.InvariantCulture, $"{least} to {most} arguments"),
        };
}
