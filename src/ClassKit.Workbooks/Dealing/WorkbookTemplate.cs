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

    /// <summary>Large print is an arrangement, and those have no template.</summary>
    private static readonly SheetWidths Widths = SheetWidths.For(largePrint: false);

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
            .. layout.Exercises.Select(exercise => new Blank(XmlText.Escaped(ExerciseSheet.ProblemOf(exercise, standIn)), student =>
                XmlText.Escaped(ExerciseSheet.ProblemOf(exercise, student))
            )),
            .. layout.Exercises.SelectMany(exercise => exercise.Options.SelectMany(place => OptionTexts(exercise, place, standIn))),
            .. layout.Exercises.SelectMany(exercise =>
                Drawn(exercise).Select(place => WholeText(standIn, student => ExerciseSheet.AskOf(exercise, place, student)))
            ),
        ];
        var parts = PackageParts.Read(workbook);
        var bySheet = layout
            .Exercises.GroupBy(exercise => sheets[exercise.Sheet])
            .ToDictionary(sheet => sheet.Key, sheet => sheet.SelectMany(exercise => OnSheet(exercise, standIn, parts[sheet.Key])).ToList());
        return new([
            .. parts.Select(part =>
                TemplatePart.Of(
                    part.Key,
                    part.Value,
                    part.Key.StartsWith("xl/worksheets/", StringComparison.Ordinal)
                        ? [Header, .. bySheet.GetValueOrDefault(part.Key) ?? []]
                        : everywhere
                )
            ),
        ]);
    }

    /// <summary>
    /// False for a student whose name reads like a formula, which needs cells of another style, where two lists have an option alike behind
    /// one letter or two drawings one question, which share one text in the file, and where something was arranged.
    /// </summary>
    public static bool Suits(PracticeLayout layout, DealtStudent student) =>
        !CellText.LooksLikeFormula(student.Who.Shown)
        && !CellText.LooksLikeFormula(student.Who.Id)
        && student.Who.Shown.Length > 0
        && !student.HasArrangement
        && !HaveOptionAlike(layout)
        && !HaveDrawnQuestionAlike(layout)
        && !layout.Exercises.Any(exercise => CellText.LooksLikeFormula(ExerciseSheet.ProblemOf(exercise, student)));

    /// <summary>The student's workbook.</summary>
    public byte[] Fill(DealtStudent student)
    {
        var parts = new SortedDictionary<string, byte[]>(PartOrder.Instance);
        foreach (var part in _parts)
            parts.Add(part.Name, part.Fill(student));
        return PackageParts.Write(parts);
    }

    private static Blank Header { get; } = new(StandIn.Name, student => XmlText.Escaped(PageLook.Doubled(student.Who.Shown)));

    private static List<Blank> OnSheet(ExerciseLayout exercise, DealtStudent standIn, byte[] sheet)
    {
        var values = standIn.GivensOf(exercise.Exercise.Id);
        var xml = Encoding.UTF8.GetString(sheet);
        return
        [
            HeightOf(exercise.ProblemRow, xml, student => ExerciseSheet.ProblemHeight(ExerciseSheet.ProblemOf(exercise, student), Widths)),
            .. exercise.Options.SelectMany(place =>
                place.List.Options.Select(
                    (_, index) =>
                        HeightOf(place.FirstRow + index, xml, student =>
                            OptionRows.Height(OptionsOf(exercise, place, student)[index], Widths.Option)
                        )
                )
            ),
            .. Drawn(exercise)
                .Select(place =>
                    HeightOf(place.Address.Row, xml, student =>
                        ExerciseSheet.AnswerHeight(ExerciseSheet.AskOf(exercise, place, student), AnswerNote.Of(place.Part), Widths)
                    )
                ),
            .. exercise.Givens.Select(place => new Blank($">{values[place.Given.Id]}<", student =>
                string.Create(CultureInfo.InvariantCulture, $">{(double)student.GivensOf(exercise.Exercise.Id)[place.Given.Id]}<")
            )),
        ];
    }

    /// <summary>The options of a list, each in its row, in an order of the student's own.</summary>
    private static IEnumerable<Blank> OptionTexts(ExerciseLayout exercise, OptionPlace place, DealtStudent standIn) =>
        OptionsOf(exercise, place, standIn).Select((_, index) => WholeText(standIn, student => OptionsOf(exercise, place, student)[index]));

    /// <summary>All that stands in a cell, told to each student in words of their own.</summary>
    private static Blank WholeText(DealtStudent standIn, Func<DealtStudent, string> text)
    {
        return new(Between(standIn), Between);

        string Between(DealtStudent student) => $">{XmlText.Escaped(text(student))}<";
    }

    private static IReadOnlyList<string> OptionsOf(ExerciseLayout exercise, OptionPlace place, DealtStudent student) =>
        OptionRows.Texts(exercise, place, student.GivensOf(exercise.Exercise.Id));

    private static IEnumerable<AnswerPlace> Drawn(ExerciseLayout exercise) =>
        exercise.Answers.Where(place => place.Part.Choice?.Drawing is not null);

    private static bool HaveDrawnQuestionAlike(PracticeLayout layout) =>
        HaveAlike(layout.Exercises.SelectMany(Drawn).Select(place => place.Part.Ask));

    private static bool HaveOptionAlike(PracticeLayout layout) =>
        HaveAlike(
            layout.Exercises.SelectMany(exercise => exercise.Options).SelectMany(place => place.List.Options).Select(option => option.Words)
        );

    private static bool HaveAlike(IEnumerable<string> texts) =>
        texts.CountBy(text => text, StringComparer.Ordinal).Any(text => text.Value > 1);

    private static Blank HeightOf(int row, string sheet, Func<DealtStudent, double> height)
    {
        var start = RowStart(row).Match(sheet);
        var before = start.Value[..^start.Groups["height"].Length];
        return new(start.Value, student => string.Create(CultureInfo.InvariantCulture, $"{before}{height(student)}"));
    }

    /// <summary>The start of a row up to its height, which follows from how long its text is.</summary>
    private static Regex RowStart(int row) =>
        new(string.Create(CultureInfo.InvariantCulture, $":row r=\"{row}\"[^>]*? ht=\"(?<height>[0-9.]+)"), RegexOptions.CultureInvariant);
}
