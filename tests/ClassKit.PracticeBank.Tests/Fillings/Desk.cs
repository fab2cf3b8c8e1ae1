using System.Globalization;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;

namespace ClassKit.PracticeBank.Tests.Fillings;

/// <summary>One exercise on a student's sheet, and the ways of writing its formulas.</summary>
internal sealed class Desk(ExerciseLayout layout, DealtStudent student)
{
    private readonly Dictionary<string, CellAddress> _cells = layout
        .Givens.Select(place => (place.Given.Id, place.Address))
        .Concat(layout.Answers.Select(place => (place.Part.Id, place.Address)))
        .ToDictionary(cell => cell.Item1, cell => cell.Address, StringComparer.OrdinalIgnoreCase);

    private readonly Dictionary<string, string> _names = layout
        .Givens.Select(place => (place.Given.Id, place.DefinedName))
        .Concat(layout.Answers.Select(place => (place.Part.Id, place.DefinedName)))
        .ToDictionary(name => name.Item1, name => name.DefinedName, StringComparer.OrdinalIgnoreCase);

    public Exercise Exercise => layout.Exercise;

    /// <summary>Formulas in cells that nobody asked for, to the right of all that was dealt.</summary>
    public List<(CellAddress Cell, string Formula)> Scratch { get; } = [];

    public IReadOnlyDictionary<string, decimal> Givens { get; } = student.GivensOf(layout.Exercise.Id);

    public IReadOnlyDictionary<string, double> Right { get; } = student.AnswersOf(layout.Exercise.Id);

    public CellAddress Cell(string name) => _cells[name];

    public string FirstGiven => _cells[Exercise.Givens[0].Id].Cell;

    /// <summary>The key over the sheet's cells, without its =.</summary>
    public string Cells(Part part) => Cells(part.Key);

    /// <summary>A formula over the names of the exercise, over the sheet's cells, without its =.</summary>
    public string Cells(CellFormula formula) =>
        formula.ReplaceNames(name => _cells.TryGetValue(name, out var cell) ? cell.Cell : null).ToString()[1..];

    public string Absolute(Part part) =>
        Over(part, name => _cells.TryGetValue(name, out var cell) ? $"${CellAddress.ColumnLetters(cell.Column)}${cell.Row}" : null);

    public string AcrossSheets(Part part) =>
        Over(part, name => _cells.TryGetValue(name, out var cell) ? $"'{cell.Sheet}'!{cell.Cell}" : null);

    public string Names(Part part) => Over(part, _names.GetValueOrDefault);

    /// <summary>Over the givens alone, earlier parts worked out again inside it.</summary>
    public string InOneGo(Part part)
    {
        var texts = Exercise.Givens.ToDictionary(given => given.Id, given => _cells[given.Id].Cell, StringComparer.OrdinalIgnoreCase);
        foreach (var before in Exercise.Parts.TakeWhile(other => other != part))
            texts[before.Id] = $"({Over(before, texts.GetValueOrDefault)})";
        return Over(part, texts.GetValueOrDefault);
    }

    /// <summary>The key over cells, one name of it replaced by a number.</summary>
    public string Typing(Part part, string name, double number) => Over(part, other => other == name
                ? number.ToString("R", CultureInfo.InvariantCulture)
            : _cells.TryGetValue(other, out var cell) ? cell.Cell
            : null);

    /// <summary>Puts a formula into a cell of the scratch area.</summary>
    /// <returns>The cell.</returns>
    public string Aside(Part part, string formula)
    {
        var cell = _cells[part.Id] with { Column = 30 + Scratch.Count };
        Scratch.Add((cell, formula));
        return cell.Cell;
    }

    /// <summary>True if a part's key builds on another, directly or through others.</summary>
    public bool BuildsOn(Part part, Part earlier) =>
        part.Key.Names.Any(name =>
            string.Equals(name, earlier.Id, StringComparison.OrdinalIgnoreCase)
            || (
                Exercise.Parts.FirstOrDefault(other => string.Equals(other.Id, name, StringComparison.OrdinalIgnoreCase)) is { } between
                && BuildsOn(between, earlier)
            )
        );

    private static string Over(Part part, Func<string, string?> name) => part.Key.ReplaceNames(name).ToString()[1..];
}
