using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Look;
using ClassKit.Workbooks.Packages;

namespace ClassKit.Workbooks.Dealing;

/// <summary>A workbook with blanks for what is a student's own: name, id, given values and the problems told with them.</summary>
internal sealed class WorkbookTemplate
{
    private readonly IReadOnlyList<TemplatePart> _parts;

    private WorkbookTemplate(IReadOnlyList<TemplatePart> parts) => _parts = parts;

    /// <summary>Cuts the stand-in's workbook open wherever something of its own stands.</summary>
    public static WorkbookTemplate Of(PracticeLayout layout, byte[] workbook)
    {
        var standIn = StandIn.For(layout);
        var sheets = PackageParts.SheetParts(workbook);
        List<Blank> everywhere =
        [
            new(StandIn.Name, student => XmlText.Escaped(student.Who.Shown)),
            new(StandIn.Id, student => XmlText.Escaped(student.Who.Id)),
            .. layout.Exercises.Select(exercise => new Blank(
                XmlText.Escaped(ExerciseSheet.ProblemOf(exercise, standIn)), student => XmlText.Escaped(ExerciseSheet.ProblemOf(exercise, student)))),
        ];
        var parts = PackageParts.Read(workbook);
        var bySheet = layout.Exercises.GroupBy(exercise => sheets[exercise.Sheet]).ToDictionary(sheet => sheet.Key, sheet => sheet.SelectMany(exercise => OnSheet(exercise, standIn, parts[sheet.Key])).ToList());
        return new([.. parts.Select(part => TemplatePart.Of(part.Key, part.Value,
            part.Key.StartsWith("xl/worksheets/", StringComparison.Ordinal) ? [Header, .. bySheet.GetValueOrDefault(part.Key) ?? []] : everywhere))]);
    }

    /// <summary>False for a student whose name reads like a formula, which needs cells of another style, where options are in an order of the student's own, and where something was arranged.</summary>
    public static bool Suits(PracticeLayout layout, DealtStudent student) =>
        !CellText.LooksLikeFormula(student.Who.Shown) && !CellText.LooksLikeFormula(student.Who.Id)
        && student.Who.Shown.Length > 0
        && !student.HasArrangement
        // The order of options is a student's own.
        && !layout.Exercises.Any(exercise => exercise.Options.Count > 0)
        && !layout.Exercises.Any(exercise => CellText.LooksLikeFormula(ExerciseSheet.ProblemOf(exercise, student)));

    /// <summary>The student's workbook.</summary>
    public byte[] Fill(DealtStudent student)
    {
        var parts = new SortedDictionary<string, byte[]>(PartOrder.Instance);
        foreach (var part in _parts) parts.Add(part.Name, part.Fill(student));
        return PackageParts.Write(parts);
    }

    private static Blank Header { get; } = new(StandIn.Name, student => XmlText.Escaped(PageLook.Doubled(student.Who.Shown)));

    private static List<Blank> OnSheet(ExerciseLayout exercise, DealtStudent standIn, byte[] sheet)
    {
        var values = standIn.GivensOf(exercise.Exercise.Id);
        var row = ProblemRow(exercise.ProblemRow).Match(Encoding.UTF8.GetString(sheet));
        var before = row.Value[..^row.Groups["height"].Length];
        return
        [
            new(row.Value, student => string.Create(CultureInfo.InvariantCulture, $"{before}{ExerciseSheet.ProblemHeight(ExerciseSheet.ProblemOf(exercise, student))}")),
            .. exercise.Givens.Select(place => new Blank(
                $">{values[place.Given.Id]}<", student => string.Create(CultureInfo.InvariantCulture, $">{(double)student.GivensOf(exercise.Exercise.Id)[place.Given.Id]}<"))),
        ];
    }

    /// <summary>The start of the problem's row up to its height, which follows from how long the problem is.</summary>
    private static Regex ProblemRow(int row) => new(string.Create(CultureInfo.InvariantCulture, $":row r=\"{row}\"[^>]*? ht=\"(?<height>[0-9.]+)"), RegexOptions.CultureInvariant);
}
