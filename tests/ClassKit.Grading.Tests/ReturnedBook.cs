using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Intake;

namespace ClassKit.Grading.Tests;

/// <summary>A dealt workbook as a snapshot, filled in by a test the way a student would fill it in.</summary>
internal sealed class ReturnedBook
{
    private readonly Dictionary<string, Dictionary<(int Row, int Column), CellContent>> _sheets = [];
    private readonly List<DefinedName> _names = [];
    private readonly List<(string Sheet, CellRange Range)> _merged = [];
    private readonly DealtStudent _student;
    private readonly List<DealtGiven> _givens;
    private readonly List<DealtAnswer> _answers;
    private int _insertedBefore = int.MaxValue;

    public ReturnedBook(DealtStudent student)
    {
        _student = student;
        var layout = PracticeLayout.For([.. student.Variants.Select(variant => variant.Exercise)]);
        _givens = [.. layout.GivensOf(student)];
        _answers = [.. layout.AnswersOf(student)];
        Put(StartPlan.Usual.StudentId, new(CellValue.FromText(student.Who.Id)));
        Name(StartPlan.StudentIdName, StartPlan.Usual.StudentId);
        foreach (var given in _givens)
        {
            Put(given.Address, new(CellValue.FromNumber((double)given.Value)));
            Put(given.Address with { Column = PracticeColumns.Usual.Tag }, new(CellValue.FromText(given.Tag)));
            Name(given.DefinedName, given.Address);
        }
        foreach (var answer in _answers)
        {
            Put(answer.Address with { Column = PracticeColumns.Usual.Tag }, new(CellValue.FromText(answer.Tag)));
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
        foreach (var column in (int[])[PracticeColumns.Usual.Tag, at.Column])
        {
            if (_sheets[at.Sheet].Remove((at.Row, column), out var content))
                Put(new(at.Sheet, at.Row + rows, column), content);
        }
        return this;
    }

    /// <summary>Renames an exercise's sheet; a program that knows names takes them along, a script does not.</summary>
    public ReturnedBook RenameSheet(string name, bool withNames)
    {
        var old = Cell(_answers[0].Part).Sheet;
        _sheets[name] = _sheets[old];
        _sheets.Remove(old);
        if (withNames)
        {
            for (var at = 0; at < _names.Count; at++)
                _names[at] = _names[at] with { Formula = _names[at].Formula.Replace($"'{old}'", $"'{name}'", StringComparison.Ordinal) };
        }
        return this;
    }

    /// <summary>Copies an exercise's sheet with all that is on it, and clears the answers of the one that was dealt.</summary>
    public ReturnedBook WorkOnCopy(string name)
    {
        var old = Cell(_answers[0].Part).Sheet;
        _sheets[name] = new(_sheets[old]);
        foreach (var answer in _answers)
            _sheets[old].Remove((answer.Address.Row, answer.Address.Column));
        return this;
    }

    /// <summary>Cuts an answer and pastes it elsewhere: its name goes along, its tag stays.</summary>
    public ReturnedBook CutAndPaste(string part, int row, int column)
    {
        var (answer, at) = (_answers.First(answer => answer.Part == part), Cell(part));
        _sheets[at.Sheet].Remove((at.Row, at.Column), out var content);
        Put(new(at.Sheet, row, column), content!);
        _names.RemoveAll(name => name.Name == answer.DefinedName);
        Name(answer.DefinedName, new(at.Sheet, row, column));
        return this;
    }

    /// <summary>Inserts a column before the first, as a script does that knows nothing of names and formulas.</summary>
    public ReturnedBook InsertColumnWithoutNames()
    {
        var sheet = Cell(_answers[0].Part).Sheet;
        _sheets[sheet] = _sheets[sheet].ToDictionary(cell => (cell.Key.Row, cell.Key.Column + 1), cell => cell.Value);
        return this;
    }

    /// <summary>Inserts a column, as a spreadsheet does: cells and names move along. What is answered afterwards refers to where they are.</summary>
    public ReturnedBook InsertColumn(int before)
    {
        var sheet = Cell(_answers[0].Part).Sheet;
        _sheets[sheet] = _sheets[sheet]
            .ToDictionary(cell => (cell.Key.Row, cell.Key.Column + (cell.Key.Column >= before ? 1 : 0)), cell => cell.Value);
        _insertedBefore = before;
        foreach (
            var (name, cell) in _givens
                .Select(given => (given.DefinedName, given.Address))
                .Concat(_answers.Select(answer => (answer.DefinedName, answer.Address)))
        )
        {
            _names.RemoveAll(known => known.Name == name);
            Name(name, Now(cell));
        }
        return this;
    }

    /// <summary>Merges an answer's cell with the one below it, whose answer is gone then.</summary>
    public ReturnedBook MergeWithBelow(string part)
    {
        var at = Cell(part);
        _merged.Add((at.Sheet, new(at.Row, at.Column, at.Row + 1, at.Column)));
        _sheets[at.Sheet].Remove((at.Row + 1, at.Column));
        return this;
    }

    /// <summary>Writes something into a cell of the row of a part or given, whatever stands there.</summary>
    public ReturnedBook Beside(string name, int column, object content)
    {
        Put(Cell(name) with { Column = column }, Content(content));
        return this;
    }

    /// <summary>Merges an answer's cell with the one to its left and types there.</summary>
    public ReturnedBook MergeToTheLeft(string part, object content)
    {
        var at = Cell(part);
        _merged.Add((at.Sheet, new(at.Row, at.Column - 1, at.Row, at.Column)));
        Put(at with { Column = at.Column - 1 }, Content(content));
        return this;
    }

    /// <summary>Types a formula into a cell that is formatted as text.</summary>
    public ReturnedBook AnswerAsText(string part, string formula) => AnswerInWords(part, "=" + Content(formula).Formula);

    /// <summary>Types a text, whatever it looks like.</summary>
    public ReturnedBook AnswerInWords(string part, string text)
    {
        Put(Cell(part), new(CellValue.FromText(text)));
        return this;
    }

    /// <summary>Puts the id elsewhere, with the words that announce it, and nowhere else.</summary>
    public ReturnedBook MoveId(CellAddress label)
    {
        WithoutId();
        Put(label, new(CellValue.FromText(StartPlan.StudentIdLabel)));
        Put(label with { Column = label.Column + 1 }, new(CellValue.FromText(_student.Who.Id)));
        return this;
    }

    /// <summary>Puts an array formula beside the answers, far from all of them: nothing on its sheet is taken for plain then.</summary>
    public ReturnedBook WithArrayFormula()
    {
        Put(Cell(_answers[0].Part) with { Row = 90, Column = 20 }, new(CellValue.Blank, "1+1", "T90:T91"));
        return this;
    }

    public ReturnedBook WithoutNames()
    {
        _names.Clear();
        return this;
    }

    public ReturnedBook WithoutId()
    {
        _sheets.Remove(StartPlan.Usual.Sheet);
        _names.RemoveAll(name => name.Name == StartPlan.StudentIdName);
        return this;
    }

    public WorkbookSnapshot Snapshot() =>
        new(
            [
                .. _sheets.Select(sheet => new SheetSnapshot(sheet.Key, sheet.Value)
                {
                    Merged = [.. _merged.Where(merged => merged.Sheet == sheet.Key).Select(merged => merged.Range)],
                }),
            ],
            [.. _names]
        );

    public ReturnedFile As(string path) => new(path, Snapshot(), null);

    private CellContent Content(object content) =>
        content switch
        {
            string text when text.StartsWith('=') => new(
                CellValue.Blank,
                CellFormula.Of(text).ReplaceNames(name => Cell(name).Cell).ToString()[1..]
            ),
            string text => new(CellValue.FromText(text)),
            double number => new(CellValue.FromNumber(number)),
            int number => new(CellValue.FromNumber(number)),
            bool logical => new(CellValue.FromLogical(logical)),
            _ => throw new ArgumentException("A text, a number or a logical.", nameof(content)),
        };

    /// <summary>Where a part's answer or a given stands, such as <c>C7</c>.</summary>
    public string CellOf(string name) => Cell(name).Cell;

    private CellAddress Cell(string name) =>
        Now(_answers.FirstOrDefault(answer => answer.Part == name)?.Address ?? _givens.First(given => given.Name == name).Address);

    private CellAddress Now(CellAddress dealt) => dealt with { Column = dealt.Column + (dealt.Column >= _insertedBefore ? 1 : 0) };

    private void Put(CellAddress cell, CellContent content)
    {
        if (!_sheets.TryGetValue(cell.Sheet, out var cells))
            _sheets[cell.Sheet] = cells = [];
        cells[(cell.Row, cell.Column)] = content;
    }

    private void Name(string name, CellAddress cell) =>
        _names.Add(new(name, null, $"'{cell.Sheet}'!${CellAddress.ColumnLetters(cell.Column)}${cell.Row}"));
}
