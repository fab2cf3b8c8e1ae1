using System.Globalization;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;

namespace ClassKit.PracticeBank.Tests.Fillings;

/// <summary>One exercise on a student's sheet, and the ways of writing its formulas.</summary>
internal sealed class Desk(Exercise exercise, DealtStudent student)
{
    private readonly Dictionary<string, CellAddress> _cells = student.Givens.Where(given => given.Exercise == exercise.Id).Select(given => (given.Name, given.Address))
        .Concat(student.Answers.Where(answer => answer.Exercise == exercise.Id).Select(answer => (answer.Part, answer.Address)))
        .ToDictionary(cell => cell.Item1, cell => cell.Address, StringComparer.OrdinalIgnoreCase);

    private readonly Dictionary<string, string> _names = student.Givens.Where(given => given.Exercise == exercise.Id).Select(given => (given.Name, given.DefinedName))
        .Concat(student.Answers.Where(answer => answer.Exercise == exercise.Id).Select(answer => (answer.Part, answer.DefinedName)))
        .ToDictionary(name => name.Item1, name => name.DefinedName, StringComparer.OrdinalIgnoreCase);

    public Exercise Exercise => exercise;

    /// <summary>Formulas in cells that nobody asked for, to the right of all that was dealt.</summary>
    public List<(CellAddress Cell, string Formula)> Scratch { get; } = [];

    public IReadOnlyDictionary<string, decimal> Givens { get; } = student.GivensOf(exercise.Id);

    public IReadOnlyDictionary<string, double> Right { get; } = student.AnswersOf(exercise.Id);

    public CellAddress Cell(string name) => _cells[name];

    public string FirstGiven => _cells[exercise.Givens[0].Id].Cell;

    /// <summary>The key over the sheet's cells, without its =.</summary>
    public string Cells(Part part) => Cells(part.Key);

    /// <summary>A formula over the names of the exercise, over the sheet's cells, without its =.</summary>
    public string Cells(CellFormula formula) => formula.ReplaceNames(name => _cells.TryGetValue(name, out var cell) ? cell.Cell : null).ToString()[1..];

    public string Absolute(Part part) => Over(part, name => _cells.TryGetValue(name, out var cell) ? $"${CellAddress.ColumnLetters(cell.Column)}${cell.Row}" : null);

    public string AcrossSheets(Part part) => Over(part, name => _cells.TryGetValue(name, out var cell) ? $"'{cell.Sheet}'!{cell.Cell}" : null);

    public string Names(Part part) => Over(part, _names.GetValueOrDefault);

    /// <summary>Over the givens alone, earlier parts worked out again inside it.</summary>
    public string InOneGo(Part part)
    {
        var texts = exercise.Givens.ToDictionary(given => given.Id, given => _cells[given.Id].Cell, StringComparer.OrdinalIgnoreCase);
        foreach (var before in exercise.Parts.TakeWhile(other => other != part)) texts[before.Id] = $"({Over(before, texts.GetValueOrDefault)})";
        return Over(part, texts.GetValueOrDefault);
    }

    /// <summary>The key over cells, one name of it replaced by a number.</summary>
    public string Typing(Part part, string name, double number) =>
        Over(part, other => other == name ? number.ToString("R", CultureInfo.InvariantCulture) : _cells.TryGetValue(other, out var cell) ? cell.Cell : null);

    /// <summary>Puts a formula into a cell of the scratch area.</summary>
    /// <returns>The cell.</returns>
    public string Aside(Part part, string formula)
    {
        var cell = _cells[part.Id] with { Column = 30 + Scratch.Count };
        Scratch.Add((cell, formula));
        return cell.Cell;
    }

    /// <summary>True if a part's key builds on another, directly or through others.</summary>
    public bool BuildsOn(Part part, Part earlier) => part.Key.Names.Any(name => string.Equals(name, earlier.Id, StringComparison.OrdinalIgnoreCase)
        || (exercise.Parts.FirstOrDefault(other => string.Equals(other.Id, name, StringComparison.OrdinalIgnoreCase)) is { } between && BuildsOn(between, earlier)));

    private static string Over(Part part, Func<string, string?> name) => part.Key.ReplaceNames(name).ToString()[1..];
}
