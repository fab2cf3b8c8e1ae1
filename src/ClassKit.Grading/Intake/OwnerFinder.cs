using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Finds out whose workbook a returned file is: what is inside counts, its name is a hint.</summary>
internal sealed class OwnerFinder
{
    private readonly DealtClass _dealt;
    private readonly Dictionary<string, DealtStudent> _byId;
    private readonly NameHints _names;

    public OwnerFinder(DealtClass dealt)
    {
        _dealt = dealt;
        _names = new(dealt);
        _byId = dealt.Students.ToDictionary(student => student.Student.Id, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Whose workbook this is by what is inside.</summary>
    public Owner ByContent(WorkbookSnapshot workbook)
    {
        if (IdInside(workbook) is { } id && _byId.TryGetValue(id, out var student)) return new(student, OwnerEvidence.IdCell);
        return ByGivens(workbook) is { } likely ? new(likely, OwnerEvidence.Givens) : new(null, OwnerEvidence.None);
    }

    /// <summary>Whom the file's name speaks of.</summary>
    public DealtStudent? ByFileName(string path) => _names.Of(path);

    private static string? IdInside(WorkbookSnapshot workbook)
    {
        var named = workbook.FindName(PracticeLayout.StudentIdName) is { } name ? CellReference.Of(name.Formula) : null;
        return TextOf(workbook, named) ?? TextOf(workbook, PracticeLayout.StudentId) ?? TextOf(workbook, BesideLabel(workbook));
    }

    /// <summary>The cell beside the words that announce the id, wherever sheet and cell have gone.</summary>
    private static CellAddress? BesideLabel(WorkbookSnapshot workbook)
    {
        foreach (var sheet in workbook.Sheets)
        {
            foreach (var ((row, column), content) in sheet.Cells)
            {
                if (content.Stored is { IsText: true, Text: PracticeLayout.StudentIdLabel }) return new(sheet.Name, row, column + 1);
            }
        }
        return null;
    }

    private static string? TextOf(WorkbookSnapshot workbook, CellAddress? address) =>
        address is { } cell && workbook.Find(cell) is { Stored: { IsText: true, Text: var text } } ? text.Trim() : null;

    /// <summary>The one student for whom clearly more of the dealt numbers stand in their places than for anyone else.</summary>
    private DealtStudent? ByGivens(WorkbookSnapshot workbook)
    {
        if (_dealt.Students.Count == 0) return null;
        // The places are the same for everyone who has an exercise, so that finding them for one student finds them for all.
        var finder = new CellFinder(workbook);
        var values = _dealt.Exercises
            .SelectMany(exercise => finder.Find(_dealt.Students.First(student => student.Givens.Any(given => given.Exercise == exercise.Id)), exercise.Id).Givens.Select(given => (Key: (exercise.Id, given.Key), Place: given.Value)))
            .ToDictionary(given => given.Key, given => workbook.Find(given.Place)?.Stored ?? CellValue.Blank);
        var ranked = _dealt.Students
            .Select(student => (Student: student, Hits: student.Givens.Count(given =>
                values[(given.Exercise, given.Name)] is { IsNumber: true, Number: var number } && GivenCheck.IsAsDealt(number, given.Value))))
            .OrderByDescending(candidate => candidate.Hits)
            .Take(2).ToList();
        var best = ranked[0];
        var enough = best.Hits * 2 > best.Student.Givens.Count;
        return enough && (ranked.Count == 1 || best.Hits > ranked[1].Hits) ? best.Student : null;
    }
}
