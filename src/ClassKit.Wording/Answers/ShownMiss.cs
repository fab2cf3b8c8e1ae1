using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Wording.Mending;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What is told of a formula that was found near the right one. The search has an edit of the key that gives the same; told is what stands
/// in the student's formula, which may have come to the same by quite another way.
/// </summary>
internal sealed class ShownMiss
{
    private readonly AnswerFinding.NearMiss _miss;
    private readonly Exercise _exercise;
    private readonly Part _part;
    private readonly FormulaShape _formula;
    private readonly FormulaShape _key;
    private readonly SheetTerms _sheet;
    private readonly MendWords _mend;

    /// <param name="miss">What was found.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    /// <param name="typed">The student's formula.</param>
    /// <param name="sheet">Their sheet.</param>
    public ShownMiss(AnswerFinding.NearMiss miss, Exercise exercise, Part part, string typed, SheetTerms sheet)
    {
        (_miss, _exercise, _part, _sheet) = (miss, exercise, part, sheet);
        (_formula, _key) = (new(typed), new(part.Key.ToString()));
        _mend = new(exercise, part, typed, sheet);
    }

    /// <summary>What is told; null where nobody could say anything that they would recognise.</summary>
    public NearMissTold? Told()
    {
        var right = _part.Key.ToString()[1..];
        if (_formula.DiffersInBracketsAloneFrom(_sheet.Cells(right)))
            return Said(new KeyEdit.OtherBrackets(right, _miss.Formula[1..]), _mend.Whole());
        if (_formula.Tree is not { } tree)
            return null;
        if (new OwnSlip(_sheet).Between(_key.Tree!, tree) is KeyEdit.OtherSign or KeyEdit.Inverse)
            return Said(new OwnSlip(_sheet).Between(_key.Tree!, tree)!, _mend.Whole());
        var written = Flat.Of(_sheet.Named(tree));
        var isWritten = written.Sorted == Flat.Of(CellFormula.Of(_miss.Formula).Shape).Sorted;
        // Of what stands in cells of their own we know what it gives, and not how it is written.
        var reading = UnseenWords.IsThroughOtherCells(written) ? null : PartMending.Of(_exercise, _part).Change(written);
        if (reading is not null && !_sheet.Tells(reading))
            return null;
        if (_miss.Edits.Any(_sheet.IsOfNoShare))
            return null;
        if (isWritten && _miss.Edits is [var one] && MethodWords.IsTold(one))
            return Said(one, reading is null ? _mend.Whole() : _mend.Of(reading));
        if (reading is not null)
            return new($"It looks as if {OwnChangeWords.What(reading.Change, _sheet)}", _mend.Of(reading), _miss.Edits);
        if (isWritten && _miss.Edits.Count > 1 && OtherWayAndOperation(tree) is { } both)
            return new($"It looks as if {both}", _mend.Whole(), _miss.Edits);
        if (isWritten && _miss.Edits.Count > 1)
            return new(
                $"It looks as if two things happened: {MethodWords.Several(_miss.Edits, _part, _sheet, _key)}",
                _mend.Whole(),
                _miss.Edits
            );
        return _miss.Edits.Count > 1
            ? null
            : new($"Your formula works out as if {MethodWords.Several(_miss.Edits, _part, _sheet, _key)}", _mend.Whole(), []);
    }

    /// <summary>
    /// A difference for a quotient, or the other way round, of the same two with their places changed: told as two edits, either would say
    /// of the first what was done with the second. Null of anything else.
    /// </summary>
    private string? OtherWayAndOperation(FormulaNode tree)
    {
        if (
            _sheet.Named(tree) is not BinaryNode written
            || _key.Tree is not BinaryNode right
            || (FormulaShape.Text(written.Left), FormulaShape.Text(written.Right))
                != (FormulaShape.Text(right.Right), FormulaShape.Text(right.Left))
        )
            return null;
        var (first, last) = (_sheet.Piece(FormulaShape.Text(right.Left)), _sheet.Piece(FormulaShape.Text(right.Right)));
        return (written.Operator, right.Operator) switch
        {
            (BinaryOperator.Subtract, BinaryOperator.Divide) => $"{first} was subtracted from {last}, where it has to be divided by it",
            (BinaryOperator.Divide, BinaryOperator.Subtract) => $"{last} was divided by {first}, where it has to be subtracted from it",
            _ => null,
        };
    }

    private NearMissTold Said(KeyEdit edit, string cure) => new($"It looks as if {EditWords.What(edit, _sheet, _key)}", cure, [edit]);
}
