using System.Globalization;
using System.Text.Json;
using ClassKit.Content.Classes;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;
using CsvHelper;

namespace ClassKit.EndToEnd.Tests.Marking;

/// <summary>A rehearsed class whose students have different sets, from dealing to the gradebook.</summary>
public sealed class SpreadTests : IClassFixture<SpreadTests.Rehearsal>
{
    private const int Students = 20;

    private readonly Rehearsal _rehearsal;

    public SpreadTests(Rehearsal rehearsal) => _rehearsal = rehearsal;

    private IEnumerable<JsonElement> Graded => _rehearsal.Grades.GetProperty("students").EnumerateArray();

    [Fact]
    public void Sets_differ_and_weigh_the_same()
    {
        var sets = _rehearsal.Dealt.Students.Select(_rehearsal.Dealt.ExercisesOf).ToList();

        Assert.InRange(sets.Select(set => string.Join(' ', set.Select(exercise => exercise.Id))).Distinct().Count(), 3, Students);
        Assert.Single(sets.Select(set => set.Sum(SetChooser.PointsOf)).Distinct());
        Assert.Single(sets.Select(set => string.Join(',', set.Select(exercise => (exercise.Skill, exercise.Level)).Order())).Distinct());
        Assert.InRange(sets.Max(Minutes) - sets.Min(Minutes), 0, 0.2 * sets.Min(Minutes));

        static int Minutes(IReadOnlyList<Exercise> set) => set.Sum(exercise => exercise.Minutes);
    }

    [Fact]
    public void The_grader_judges_every_students_own_parts_as_they_were_answered()
    {
        var parts = _rehearsal.Dealt.Students.Sum(student => student.Variants.Sum(variant => variant.Answers.Count));

        Assert.Contains(
            $"{parts} answers: the grader judged {parts} of them as they were made",
            _rehearsal.Output,
            StringComparison.Ordinal
        );
        foreach (var (student, dealt) in Graded.Zip(_rehearsal.Dealt.Students))
        {
            Assert.Equal(
                dealt.Variants.SelectMany(variant => variant.Exercise.Parts.Select(part => $"{variant.Exercise.Id}.{part.Id}")),
                student
                    .GetProperty("answers")
                    .EnumerateArray()
                    .Select(answer => $"{answer.GetProperty("exercise").GetString()}.{answer.GetProperty("part").GetString()}")
            );
        }
    }

    [Fact]
    public void In_the_table_of_grades_parts_not_asked_are_empty_and_the_others_add_up()
    {
        var lines = File.ReadAllLines(_rehearsal.Of("graded", "grades.csv"));
        var head = lines[0].Split(',');
        foreach (var (line, dealt) in lines.Skip(1).Zip(_rehearsal.Dealt.Students))
        {
            var cells = head.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second);
            var parts = head.Where(name => name.Contains('.', StringComparison.Ordinal)).Where(name => cells[name].Length > 0).ToList();
            // Answers in words wait for the instructor's points; none at all has none.
            Assert.Equal(
                dealt
                    .Variants.SelectMany(variant =>
                        variant.Exercise.Parts.Select(part => (part.InWords, Name: $"{variant.Exercise.Id}.{part.Id}"))
                    )
                    .Where(asked => asked.InWords is null || cells[asked.Name] == "0")
                    .Select(asked => asked.Name),
                parts
            );
            Assert.Equal(parts.Sum(name => Number(cells[name])), Number(cells["points"]), 0.02);
        }
    }

    [Fact]
    public void In_the_gradebook_an_office_suite_works_out_the_same_totals()
    {
        var sheet = Rows(
            LibreOffice.Convert(File.ReadAllBytes(_rehearsal.Of("graded", "gradebook.xlsx")), "csv:Text - txt - csv (StarCalc):44,34,76")
        );
        var head = sheet.Single(row => row.Contains("Total"));
        foreach (var student in Graded)
        {
            var row = sheet.Single(row => row.Contains(student.GetProperty("id").GetString()));
            Assert.Equal(student.GetProperty("points").GetDouble(), Number(row[Array.IndexOf(head, "Total")]), 0.006);
            Assert.Equal(student.GetProperty("outOf").GetDouble(), Number(row[Array.IndexOf(head, "Out of")]), 0.006);
        }
    }

    [Fact]
    public void Every_page_calls_an_exercise_by_the_number_that_it_has_for_the_class()
    {
        foreach (var student in _rehearsal.Dealt.Students)
        {
            foreach (var exercise in _rehearsal.Dealt.ExercisesOf(student))
            {
                var number = _rehearsal.Dealt.Exercises.ToList().IndexOf(exercise) + 1;
                var heading = $"id=\"exercise-{exercise.Id}\"><span class=\"ordinal\">{number}</span>";
                Assert.Contains(
                    heading,
                    File.ReadAllText(_rehearsal.Of("dealt", "sheets", $"{student.Who.Id}.html")),
                    StringComparison.Ordinal
                );
                Assert.Contains(
                    heading,
                    File.ReadAllText(_rehearsal.Of("graded", "feedback", $"{student.Who.Id}.html")),
                    StringComparison.Ordinal
                );
                Assert.Contains(_rehearsal.Dealt.LayOut().AnswersOf(student), answer =>
                    answer.Exercise == exercise.Id && answer.Tag == $"{number}a"
                );
            }
        }
    }

    [Fact]
    public void The_answer_key_and_the_class_report_speak_of_those_who_were_asked()
    {
        var key = File.ReadAllText(_rehearsal.Of("dealt", "answer-key.html"));
        // Behind the grid, which has a row for every student of the class.
        var rows = key[key.IndexOf("<nav", StringComparison.Ordinal)..].Split("<th scope=\"row\">").Length - 1;
        Assert.Equal(2 * _rehearsal.Dealt.Students.Sum(student => _rehearsal.Dealt.ExercisesOf(student).Count), rows);

        var report = File.ReadAllText(_rehearsal.Of("graded", "class-report.html"));
        Assert.Contains("Students had different sets of equal weight, so each part was asked of", report, StringComparison.Ordinal);
        Assert.Contains("can only be told where all were asked the same", report, StringComparison.Ordinal);
        Assert.DoesNotContain("Cronbach", report, StringComparison.Ordinal);
    }

    [Fact]
    public void A_correction_of_what_a_student_was_not_asked_is_refused_with_its_line()
    {
        var student = _rehearsal.Dealt.Students[0];
        var other = _rehearsal.Dealt.Exercises.First(exercise => !_rehearsal.Dealt.ExercisesOf(student).Contains(exercise));
        File.WriteAllText(
            _rehearsal.Of("corrections.csv"),
            $"student,part,points,reason\n{student.Who.Id},{other.Id}.{other.Parts[0].Id},1,Shown on paper\n"
        );

        var problem = Assert.Single(CorrectionsReader.Read(_rehearsal.Of("corrections.csv"), _rehearsal.Dealt).Problems);
        Assert.Equal(2, problem.Line);
        Assert.Contains($"was not dealt {other.Id}", problem.Found, StringComparison.Ordinal);
    }

    private static List<string[]> Rows(byte[] csv)
    {
        using var parser = new CsvParser(new StreamReader(new MemoryStream(csv)), CultureInfo.InvariantCulture);
        var rows = new List<string[]>();
        while (parser.Read())
            rows.Add(parser.Record!);
        return rows;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    public sealed class Rehearsal : IDisposable
    {
        private readonly TemporaryFolder _folder = new();

        public Rehearsal()
        {
            Output = ClassKitRun
                .Of(
                    "rehearse",
                    Path.Combine(Checkout.Demo.Root, "lessons", "practice"),
                    "--students",
                    Students.ToString(CultureInfo.InvariantCulture),
                    "--spread",
                    "--level",
                    "standard",
                    "--minutes",
                    "45",
                    "--out",
                    Of()
                )
                .Done()
                .Output;
            Dealt = DealtJson.Read("dealt.json", File.ReadAllText(Of("dealt", "dealt.json"))).Model!;
            Grades = JsonDocument.Parse(File.ReadAllText(Of("graded", "grades.json"))).RootElement;
        }

        public string Output { get; }

        public DealtClass Dealt { get; }

        public JsonElement Grades { get; }

        public string Of(params string[] parts) => _folder.Of(["out", .. parts]);

        public void Dispose() => _folder.Dispose();
    }
}
