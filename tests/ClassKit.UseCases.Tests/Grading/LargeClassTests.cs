using System.IO.Compression;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Hostile;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>
/// What we make ourselves is as large as the class that it is about, and is never measured by what a stranger's file may hold.
/// </summary>
public sealed class LargeClassTests(LargeClassTests.LargeClass large) : IClassFixture<LargeClassTests.LargeClass>
{
    private const string Sheet = "Gradebook";

    [Fact]
    public void A_gradebook_larger_than_any_file_of_strangers_has_its_totals_stored()
    {
        var gradebook = large.File("gradebook-01.xlsx");

        Assert.IsType<Refusal.TooLarge>(ReturnedWorkbookReader.Read(gradebook).Refusal);
        var points = Parts.Of(gradebook).Text("xl/worksheets/sheet1.xml");
        Assert.Equal(points.Split("</x:f>").Length, points.Split("</x:f><x:v>").Length);
    }

    [Fact]
    public void Everybody_stands_in_one_gradebook_one_report_and_one_file_to_print_and_it_is_said()
    {
        var parts = ClassPart.Of(LargeClass.Students);
        Assert.Equal(3, parts.Count);
        Assert.Equal(
            new Note.InParts("gradebook-01.xlsx", "gradebook-03.xlsx", 3),
            Assert.Single(large.Produced.Notes.OfType<Note.InParts>())
        );
        Assert.Equal(LargeClass.Students, large.Produced.Notes.OfType<Note.Graded>().Single().WithGrade);
        var report = large.Text("class-report.html");
        foreach (var part in parts)
        {
            var (reported, printed) = (large.Text(part.Named("class-report.html")), large.Text(part.Named("feedback-to-print.html")));
            Assert.Equal(Names(part), Everybody().Where(name => reported.Contains($">{name}</a>", StringComparison.Ordinal)));
            Assert.Equal(Names(part), Everybody().Where(name => printed.Contains($">{name}</h2>", StringComparison.Ordinal)));
            Assert.Contains($"href=\"{part.Named("class-report.html")}\"", report, StringComparison.Ordinal);
        }
        // The report of all is about all, and names nobody twice over.
        Assert.Contains($"of {LargeClass.Students} students", report, StringComparison.Ordinal);
        Assert.Equal(LargeClass.Students, System.Text.Encoding.UTF8.GetString(large.File("grades.csv")).Split("\r\n").Length - 2);

        IEnumerable<string> Everybody() => large.Dealt.Students.Select(student => student.Who.Name);
        List<string> Names(ClassPart part) => [.. part.Of(large.Dealt.Students).Select(student => student.Who.Name)];
    }

    [Fact]
    public void Points_typed_into_a_later_gradebook_are_found()
    {
        using var folder = new TemporaryFolder();
        var dealt = large.Dealt;
        var student = dealt.Students[ClassPart.Most + 4].Who;
        OutputFolder.Write(folder.Path, GradeClass.Kind, [new OutputFile("gradebook-02.xlsx", Small())]);

        // The fifth student of the second part, the first part of the first exercise.
        var cell = Reading().Single(name => name.Value == student.Id).Key;
        File.WriteAllBytes(
            Path.Combine(folder.Path, "gradebook-02.xlsx"),
            WorkbookFiller.Fill(Small(), [new EnterNumber(new(Sheet, cell.Row, 4), 0.25)])
        );

        var typed = Assert.Single(TypedIntoGradebook.Read(folder.Path, dealt, []).Points);
        Assert.Equal((student.Id, "gradebook-02.xlsx", 0.25m), (typed.Student.Id, typed.File, typed.Points));

        // Without the long formulas, which no spreadsheet program would save again.
        byte[] Small() =>
            GradeFiles
                .Of(
                    new(
                        new ClassGrades(
                            dealt,
                            [.. dealt.Students.Select(seat => new StudentGrade(seat.Who, GradeStatus.Missing, null, [], []))],
                            []
                        ),
                        LargeClass.Nothing,
                        SettledDeadline.None
                    )
                )
                .Single(file => file.Path == "gradebook-02.xlsx")
                .Content;
        IEnumerable<(CellAddress Key, string Value)> Reading() =>
            ReturnedWorkbookReader
                .Read(Small())
                .Workbook!.Sheets.Single(sheet => sheet.Name == Sheet)
                .Cells.Where(entry => entry.Key.Column == 2 && entry.Value.Stored.IsText)
                .Select(entry => (new CellAddress(Sheet, entry.Key.Row, entry.Key.Column), entry.Value.Stored.Text));
    }

    [Fact]
    public void What_students_have_in_common_is_in_memory_once()
    {
        var dealt = DealtJson.Read("dealt.json", DealtJson.Write(large.Dealt)).Model!;
        foreach (var exercise in dealt.Exercises)
        {
            var names = dealt
                .Students.Select(student => student.Of(exercise.Id))
                .SelectMany(variant => variant.Givens.Keys.Concat(variant.Answers.Keys))
                .ToList();
            Assert.Equal(exercise.Givens.Count + exercise.Parts.Count, names.Distinct<object>(ReferenceEqualityComparer.Instance).Count());
        }

        var alike = SmallClass.Dealt.Students.Select(student => new Upload($"{student.Who.Id}.xlsx", () =>
            new MemoryStream(SmallClass.Filled(student))
        ));
        var graded = GradeClass.Run(new(SmallClass.Dealt, ReturnedFiles.Of([.. alike])), Run.Unwatched).Grades;
        foreach (var grades in new[] { graded, GradesJson.Read("grades.json", GradesJson.Write(graded), SmallClass.Dealt).Model! })
        {
            foreach (
                var part in grades.Students.SelectMany(student => student.Answers).GroupBy(answer => (answer.Exercise.Id, answer.Part.Id))
            )
            {
                Assert.Equal(3, part.Count(answer => answer.Outcome == Outcome.Sound));
                Assert.Single(part.Select(answer => answer.Formula!).Distinct<object>(ReferenceEqualityComparer.Instance));
                Assert.Single(part.Select(answer => answer.Findings).Distinct<object>(ReferenceEqualityComparer.Instance));
            }
        }
    }

    /// <summary>
    /// A class too large for one gradebook, whose students each show a long formula at every part, so that few of them fill one as a
    /// thousand would.
    /// </summary>
    public sealed class LargeClass : IDisposable
    {
        public const int Students = 260;

        private readonly TemporaryFolder _folder = new();

        public LargeClass()
        {
            var roster = new Roster(
                "Large class",
                [.. Enumerable.Range(0, Students).Select(at => new Student($"s{at:000}", $"Student No. {at:000}"))]
            );
            Dealt = Dealer.Deal("lesson", "Lesson", SmallClass.Dealt.Exercises, SmallClass.Dealt.Marking, roster, 3).Class!;
            foreach (var student in Dealt.Students)
                _folder.Write($"{student.Who.Id}.xlsx", Answered(Dealt, student));
            Produced = GradeCommands.Grade(Dealt, _folder.Path);
            Grades = GradesJson.Read("grades.json", Text("grades.json"), Dealt).Model!;
        }

        /// <summary>Of a class of whom nothing came back.</summary>
        internal static ClassKit.Grading.Summaries.ClassSummary Nothing { get; } =
            ClassKit.Grading.Summaries.ClassSummarizer.Summarize(new(SmallClass.Dealt, [], []));

        public DealtClass Dealt { get; }

        public ClassGrades Grades { get; }

        public Produced Produced { get; }

        /// <summary>A file, made anew each time that it is asked for.</summary>
        public byte[] File(string path) => Produced.Files.Single(file => file.Path == path).Content;

        public string Text(string path) => System.Text.Encoding.UTF8.GetString(File(path));

        public void Dispose() => _folder.Dispose();

        /// <summary>A dealt workbook with a long formula at every part.</summary>
        private static byte[] Answered(DealtClass dealt, DealtStudent student)
        {
            var parts = Parts.Of(DealtWorkbookWriter.Write(dealt, student));
            foreach (
                var sheet in dealt
                    .AnswersOf(student)
                    .GroupBy(answer => answer.Address.Sheet)
                    .Select(
                        (answers, at) => (Part: $"xl/worksheets/sheet{at + 2}.xml", Cells: answers.Select(answer => answer.Address.Cell))
                    )
            )
            {
                parts = parts.Change(sheet.Part, xml =>
                    sheet.Cells.Aggregate(xml, (text, cell) =>
                        CellXml.Put(
                            text,
                            cell,
                            $"><x:f>1+0*LEN(\"{student.Who.Id} {cell} {new string('x', 8_100)}\")</x:f><x:v>1</x:v>",
                            "x:"
                        )
                    )
                );
            }

            return parts.Pack(CompressionLevel.Fastest);
        }
    }
}
