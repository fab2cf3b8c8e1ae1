using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Finding;

namespace ClassKit.Grading.Intake;

/// <summary>Finds out whose workbook a returned file is: what is inside counts, its name is a hint.</summary>
internal sealed class OwnerFinder
{
    private readonly Dictionary<string, DealtStudent> _byId;
    private readonly NameHints _names;
    private readonly StartPlan _start;

    public OwnerFinder(DealtClass dealt)
    {
        _names = new(dealt);
        _start = dealt.Plan.Start;
        _byId = dealt.Students.ToDictionary(student => student.Who.Id, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Whose workbook this is by what is inside.</summary>
    public Owner ByContent(WorkbookSnapshot workbook, DealtNumbers numbers)
    {
        if (IdInside(workbook) is { } id && _byId.TryGetValue(id, out var student))
            return new(student, OwnerEvidence.IdCell);
        return numbers.Likeliest is { } likely ? new(likely, OwnerEvidence.Givens) : new(null, OwnerEvidence.None);
    }

    /// <summary>Whom the file's name speaks of.</summary>
    public DealtStudent? ByFileName(string path) => _names.Of(path);

    private string? IdInside(WorkbookSnapshot workbook)
    {
        var named = workbook.FindName(StartPlan.StudentIdName) is { } name ? CellReference.Of(name.Formula) : null;
        return TextOf(workbook, named) ?? TextOf(workbook, _start.StudentId) ?? TextOf(workbook, BesideLabel(workbook));
    }

    /// <summary>The cell beside the words that announce the id, wherever sheet and cell have gone.</summary>
    private static CellAddress? BesideLabel(WorkbookSnapshot workbook)
    {
        foreach (var sheet in workbook.Sheets)
        {
            foreach (var ((row, column), content) in sheet.Cells)
            {
                if (content.Stored is { IsText: true, Text: StartPlan.StudentIdLabel })
                    return new(sheet.Name, row, column + 1);
            }
        }
        return null;
    }

    private static string? TextOf(WorkbookSnapshot workbook, CellAddress? address) =>
        address is { } cell && workbook.Find(cell) is { Stored: { IsText: true, Text: var text } } ? text.Trim() : null;
}
