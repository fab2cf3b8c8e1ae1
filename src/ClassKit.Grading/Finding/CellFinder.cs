using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Layout;

namespace ClassKit.Grading.Finding;

/// <summary>Finds the dealt cells of an exercise again in a workbook that a student has worked in.</summary>
/// <remarks>
/// A program that inserts a row moves the cell, its defined name and its tag together, and all three agree. A script that moves cells and
/// not names leaves the tag with the cell; a program that drops names leaves the tag as well; a cell that is cut and pasted takes its name
/// along and leaves the tag behind. A sheet that is copied, and worked in, has the same tags as the one that was dealt. So first the sheet
/// is settled, then how far columns were moved apart, and then for every cell its name, its tag and its dealt place are weighed against what
/// stands there.
/// </remarks>
internal sealed class CellFinder
{
    /// <summary>So many columns between a tag and its value nobody inserts in good faith.</summary>
    private const int MostMoved = 8;

    private readonly WorkbookSnapshot _workbook;
    private readonly PracticePlan _plan;
    private readonly List<TaggedSheet> _sheets;
    private readonly Dictionary<string, CellAddress?> _named;
    private readonly Dictionary<string, FoundCells> _found = new(StringComparer.Ordinal);

    /// <param name="workbook">What came back.</param>
    /// <param name="plan">How it was laid out.</param>
    public CellFinder(WorkbookSnapshot workbook, PracticePlan plan)
    {
        _workbook = workbook;
        _plan = plan;
        _sheets = [.. workbook.Sheets.Select(sheet => new TaggedSheet(sheet, plan.Columns))];
        _named = CellReference.OfNames(workbook);
    }

    /// <summary>What finds them in another state of the workbook: this one, if it is the same.</summary>
    public CellFinder In(WorkbookSnapshot workbook) => ReferenceEquals(workbook, _workbook) ? this : new(workbook, _plan);

    /// <summary>
    /// Where the cells of an exercise are; where they were dealt if there is no trace of them. Looked for once: whose file it is asks
    /// first, and then the judge.
    /// </summary>
    public FoundCells Find(ExerciseLayout exercise) =>
        _found.TryGetValue(exercise.Exercise.Id, out var found) ? found : _found[exercise.Exercise.Id] = Look(exercise);

    private FoundCells Look(ExerciseLayout exercise)
    {
        var answers = exercise.Answers;
        var home = Home(answers);
        var sheet = Settle(home, answers);
        var isCopy = sheet is not null && sheet != home;
        sheet = sheet?.Moved(ColumnsMoved(sheet, exercise, isCopy));
        var givens = exercise.Givens.ToDictionary(
            given => given.Given.Id,
            given => Find(sheet, isCopy, given.DefinedName, given.Address, given.Tag)
        );
        var answered = answers.ToDictionary(
            answer => answer.Part.Id,
            answer => Find(sheet, isCopy, answer.DefinedName, answer.Address, answer.Tag)
        );
        return new(givens, answered, isCopy ? sheet!.Name : null)
        {
            AreWhereDealt =
                exercise.Givens.All(given => givens[given.Given.Id] == given.Address)
                && answers.All(answer => answered[answer.Part.Id] == answer.Address),
        };
    }

    /// <summary>
    /// By how many columns the values stand further from their tags than they were dealt: a column may have been inserted between them, or
    /// taken away. Where a given is, its number stands; names that agree on a column in which the givens are say it outright, and else it is
    /// the first column with numbers.
    /// </summary>
    private int ColumnsMoved(TaggedSheet sheet, ExerciseLayout exercise, bool isCopy)
    {
        List<CellAddress> givens = [.. exercise.Givens.Select(given => sheet.CellOf(given.Tag)).OfType<CellAddress>()];
        bool AreThere(int moved) => givens.Count(cell => IsNumber(cell with { Column = cell.Column + moved })) * 2 > givens.Count;
        // Where there are no givens, names that point to the left are those that a script left behind.
        if (Named() is { } named && (givens.Count == 0 ? named > 0 : AreThere(named)))
            return named;
        List<int> first = [.. givens.Select(FirstNumber).OfType<int>()];
        return
            first.Count * 2 > givens.Count && first.GroupBy(moved => moved).MaxBy(moved => moved.Count()) is { } most && AreThere(most.Key)
            ? most.Key
            : 0;

        int? Named()
        {
            List<(CellAddress? Name, CellAddress? Tag)> pairs =
            [
                .. exercise.Givens.Select(given => (_named.GetValueOrDefault(given.DefinedName), sheet.CellOf(given.Tag))),
                .. exercise.Answers.Select(answer => (_named.GetValueOrDefault(answer.DefinedName), sheet.CellOf(answer.Tag))),
            ];
            return isCopy
                ? null
                : pairs
                    .Where(pair => pair is ({ } name, { } tag) && name.Row == tag.Row && name.Sheet == tag.Sheet)
                    .GroupBy(pair => pair.Name!.Value.Column - pair.Tag!.Value.Column)
                    .FirstOrDefault(moved => moved.Count() * 2 > pairs.Count)
                    ?.Key;
        }

        int? FirstNumber(CellAddress given)
        {
            for (var moved = 1 - (_plan.Columns.Value - _plan.Columns.Tag); moved <= MostMoved; moved++)
            {
                if (IsNumber(given with { Column = given.Column + moved }))
                    return moved;
            }
            return null;
        }
    }

    private bool IsNumber(CellAddress cell) =>
        cell.Column > 0 && _workbook.Find(cell) is { } content && (content.Formula is not null || content.Stored.IsNumber);

    /// <summary>
    /// The sheet that most of the answers' names point at, else the one that is called as it was dealt; null if both are gone.
    /// </summary>
    private TaggedSheet? Home(IReadOnlyList<AnswerPlace> answers)
    {
        var named = answers
            .Select(answer => _named.GetValueOrDefault(answer.DefinedName)?.Sheet)
            .OfType<string>()
            .GroupBy(sheet => sheet, StringComparer.OrdinalIgnoreCase)
            .OrderByDescending(sheet => sheet.Count())
            .FirstOrDefault()
            ?.Key;
        return Sheet(named) ?? Sheet(answers.Count == 0 ? null : answers[0].Address.Sheet);
    }

    /// <summary>The sheet with the exercise's tags in which most was answered; the home sheet among equals.</summary>
    private TaggedSheet? Settle(TaggedSheet? home, IReadOnlyList<AnswerPlace> answers)
    {
        int Answered(TaggedSheet sheet) =>
            answers.Count(answer => sheet.CellOf(answer.Tag) is { } cell && CellFill.IsFilled(_workbook, cell));
        if (
            home is not null
            && answers.Any(answer => CellFill.IsFilled(_workbook, Find(home, false, answer.DefinedName, answer.Address, answer.Tag)))
        )
            return home;
        var others = _sheets.Where(sheet =>
            sheet != home && answers.Count(answer => sheet.CellOf(answer.Tag) is not null) * 2 > answers.Count
        );
        var best = others.OrderByDescending(Answered).FirstOrDefault();
        return best is not null && (home is null || Answered(best) > 0) ? best : home;
    }

    private TaggedSheet? Sheet(string? name) =>
        name is null ? null : _sheets.Find(sheet => string.Equals(sheet.Name, name, StringComparison.OrdinalIgnoreCase));

    private CellAddress Find(TaggedSheet? sheet, bool isCopy, string definedName, CellAddress dealt, string tag)
    {
        var named = isCopy ? null : _named.GetValueOrDefault(definedName);
        var tagged = sheet?.CellOf(tag);
        var place = sheet is null ? dealt : dealt with { Sheet = sheet.Name };
        var found = (named, tagged) switch
        {
            (null, null) => place,
            (null, { } cell) => cell,
            ({ } cell, null) => cell,
            ({ } byName, { } byTag) => byName == byTag || StandsForIt(byName, byTag, tag) ? byName : byTag,
        };
        var merged = CellFill.Merged(_workbook, found);
        // Two answers made one cell: what stands in it is the upper one's, and the formulas of the sheet read nothing in the lower.
        return merged.Column == found.Column && Sheet(merged.Sheet)?.TagOf(merged.Row) is { } other && !IsTag(other, tag) ? found : merged;
    }

    private static bool IsTag(string one, string tag) => string.Equals(one, tag, StringComparison.OrdinalIgnoreCase);

    /// <summary>
    /// Where name and tag disagree: the name is right if its cell was moved away by hand, and wrong if it was left behind.
    /// </summary>
    private bool StandsForIt(CellAddress byName, CellAddress byTag, string tag)
    {
        var columnsWereInserted = byTag.Column != _plan.Columns.Value;
        var isOtherRow = byName.Column == byTag.Column && Sheet(byName.Sheet)?.TagOf(byName.Row) is { } other && !IsTag(other, tag);
        return !columnsWereInserted && !isOtherRow && CellFill.IsFilled(_workbook, byName) && !CellFill.IsFilled(_workbook, byTag);
    }
}
