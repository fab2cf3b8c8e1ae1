using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading.Tests;

/// <summary>A dealt workbook as a snapshot, filled in by a test the way a student would fill it in.</summary>
internal sealed class ReturnedBook
{
    private readonly Dictionary<string, Dictionary<(int Row, int Column), CellContent>> _sheets = [];
    private readonly List<DefinedName> _names = [];
    private readonly DealtStudent _student;

    public ReturnedBook(DealtStudent student)
    {
        _student = student;
        Put(PracticeLayout.StudentId, new(CellValue.FromText(student.Student.Id)));
        Name(PracticeLayout.StudentIdName, PracticeLayout.StudentId);
        foreach (var given in student.Givens)
        {
            Put(given.Address, new(CellValue.FromNumber((double)given.Value)));
            Put(given.Address with { Column = PracticeColumns.Tag }, new(CellValue.FromText(given.Tag)));
            Name(given.DefinedName, given.Address);
        }
        foreach (var answer in student.Answers)
        {
            Put(answer.Address with { Column = PracticeColumns.Tag }, new(CellValue.FromText(answer.Tag)));
            Name(answer.DefinedName, answer.Address);
        }
    }

    /// <summary>Types something into the answer cell of a part; a formula's names become cells.</summary>
    public ReturnedBook Answer(string part, object content)
    {
        Put(Cell(part), Content(content));
        return this;
    }

    /// <summary>Types something over a given.</summary>
    public ReturnedBook Overwrite(string given, object content)
    {
        Put(Cell(given), Content(content));
        return this;
    }

    /// <summary>Moves a row's tag and answer down, as a script does that knows nothing of names.</summary>
    public ReturnedBook MoveWithoutNames(string part, int rows)
    {
        var at = Cell(part);
        foreach (var column in (int[])[PracticeColumns.Tag, at.Column])
        {
            if (_sheets[at.Sheet].Remove((at.Row, column), out var content))
                Put(new(at.Sheet, at.Row + rows, column), content);
        }
        return this;
    }

    public ReturnedBook WithoutNames()
    {
        _names.Clear();
        return this;
    }

    public ReturnedBook WithoutId()
    {
        _sheets.Remove(PracticeLayout.StartSheet);
        _names.RemoveAll(name => name.Name == PracticeLayout.StudentIdName);
        return this;
    }

    public WorkbookSnapshot Snapshot() => new([.. _sheets.Select(sheet => new SheetSnapshot(sheet.Key, sheet.Value))], [.. _names]);

    public ReturnedFile As(string path) => new(path, Snapshot(), null);

    private CellContent Content(object content) => content switch
    {
        string text when text.StartsWith('=') => new(CellValue.Blank, CellFormula.Of(text).ReplaceNames(name => Cell(name).Cell).ToString()[1..]),
        string text => new(CellValue.FromText(text)),
        double number => new(CellValue.FromNumber(number)),
        int number => new(CellValue.FromNumber(number)),
        bool logical => new(CellValue.FromLogical(logical)),
        _ => throw new ArgumentException("A text, a number or a logical.", nameof(content)),
    };

    private CellAddress Cell(string name) =>
        _student.Answers.FirstOrDefault(answer => answer.Part == name)?.Address ?? _student.Givens.First(given => given.Name == name).Address;

    private void Put(CellAddress cell, CellContent content)
    {
        if (!_sheets.TryGetValue(cell.Sheet, out var cells)) _sheets[cell.Sheet] = cells = [];
        cells[(cell.Row, cell.Column)] = content;
    }

    private void Name(string name, CellAddress cell) =>
        _names.Add(new(name, null, $"'{cell.Sheet}'!${CellAddress.ColumnLetters(cell.Column)}${cell.Row}"));
}
