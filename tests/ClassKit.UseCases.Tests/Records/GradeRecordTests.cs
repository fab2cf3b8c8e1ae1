using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Regrading;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Grading.Facts;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.UseCases.Touring;
using CsvHelper;

namespace ClassKit.UseCases.Tests.Records;

/// <summary>
/// There is one record of a graded class: what is written of it is read back equal in every field, and everything else is made of it.
/// </summary>
public sealed class GradeRecordTests
{
    private static readonly DemoMaterial Demo = DemoMaterial.Find(AppContext.BaseDirectory)!;

    /// <summary>As it is read from a folder: without what dealt.json does not hold, such as mail addresses.</summary>
    private static readonly DealtClass Small = DealtJson.Read("dealt.json", DealtJson.Write(SmallClass.Dealt)).Model!;

    private static readonly Lazy<(DealtClass Dealt, GradeResult Graded)> DemoGraded = new(() =>
    {
        var deal = new DealPaths(Demo.Lesson, Demo.Roster, new(SetWish.None, IsSpread: false, DemoMaterial.Seed))
        {
            ClassFile = Demo.Class,
        }.Read();
        var dealt = DealtJson.Read("dealt.json", DealtJson.Write(DealPractice.Run(deal.Model!, Run.Unwatched).Model!.Dealt)).Model!;
        var request = new GradePaths("dealt", Demo.Returned) { Corrections = Demo.Corrections, Due = DueWish.Parse("2026-03-02T10:00") }
            .Read(dealt)
            .Model!;
        return (dealt, GradeClass.Run(request, Run.Unwatched));
    });

    private static ClassGrades ReadBack(ClassGrades grades, DealtClass? dealt)
    {
        var reading = GradesJson.Read("grades.json", GradesJson.Write(grades), dealt);
        Assert.Empty(reading.Problems);
        return reading.Model!;
    }

    [Fact]
    public void Whatever_can_stand_in_a_record_is_read_back()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var grades = AnyGrades.Of(Small, seed);
            var back = ReadBack(grades, grades.Dealt);
            Assert.True(
                Differences.Between(grades, back) is [],
                $"seed {seed}: {string.Join("\n", Differences.Between(grades, back).Take(5))}"
            );
            Assert.Equal(GradesJson.Write(grades), GradesJson.Write(back));
        }
    }

    [Fact]
    public void Every_kind_of_fact_is_among_what_is_tried()
    {
        var tried = Enumerable.Range(0, 300).Select(seed => AnyGrades.Of(Small, seed)).ToList();
        var students = tried.SelectMany(grades => grades.Students).ToList();
        Type[] seen =
        [
            .. students.SelectMany(student => student.Flags).Select(flag => flag.GetType()),
            .. students.SelectMany(student => student.Answers).SelectMany(answer => answer.Findings).Select(finding => finding.GetType()),
            .. tried.SelectMany(grades => grades.Files).Select(file => file.Why?.GetType()).OfType<Type>(),
        ];
        foreach (var type in (Type[])[typeof(Flag), typeof(AnswerFinding), typeof(Uncounted)])
            Assert.Empty(type.GetNestedTypes().Where(kind => kind.IsSealed).Except(seen));
    }

    [Fact]
    public void The_demo_class_is_read_back_and_every_file_made_of_it_is_the_same_byte_for_byte()
    {
        var (dealt, graded) = DemoGraded.Value;
        Assert.NotEmpty(graded.Grades.Students.SelectMany(student => student.Flags));

        var back = ReadBack(graded.Grades, dealt);

        Assert.Empty(Differences.Between(graded.Grades, back));
        var (before, after) = (GradeFiles.Of(graded), GradeFiles.Of(new(back, ClassSummarizer.Summarize(back), graded.Deadline)));
        Assert.Equal(before.Select(file => file.Path), after.Select(file => file.Path));
        foreach (var (one, other) in before.Zip(after))
            Assert.True(one.Content.AsSpan().SequenceEqual(other.Content), one.Path);
    }

    [Fact]
    public void What_grading_returns_and_what_regrading_reads_and_returns_are_equal()
    {
        using var folder = new TemporaryFolder();
        folder.Write("dealt/dealt.json", Encoding.UTF8.GetBytes(DealtJson.Write(Small)));
        folder.Write("returned/ada-berg.xlsx", SmallClass.Filled(SmallClass.Ada));
        folder.Write("returned/Ben Okoye.xlsx", SmallClass.Blank(SmallClass.Ben));
        folder.Write("returned/notes.txt", [1, 2, 3]);
        var paths = new GradePaths(folder.Of("dealt"), folder.Of("returned"))
        {
            Due = DueWish.Parse("2001-02-03T04:05"),
            Graded = folder.Of("graded"),
        };
        var graded = GradeClass.Run(paths.Read().Model!, Run.Unwatched).Grades;
        folder.Write("graded/grades.json", Encoding.UTF8.GetBytes(GradesJson.Write(graded)));

        var again = RegradeClass.Run(new RegradePaths(paths with { Due = null }).Read().Model!, Run.Unwatched);

        Assert.Empty(Differences.Between(graded, again.Earlier));
        Assert.Empty(Differences.Between(graded, again.Now.Grades));
        Assert.Empty(again.Changes);
    }

    [Fact]
    public void The_table_says_what_the_record_says()
    {
        foreach (var grades in Enumerable.Range(0, 40).Select(seed => AnyGrades.Of(Small, seed)).Append(DemoGraded.Value.Graded.Grades))
        {
            using var csv = new CsvReader(new StringReader(GradesCsv.Write(grades)), CultureInfo.InvariantCulture);
            Assert.True(csv.Read() && csv.ReadHeader());
            foreach (var student in grades.Students)
            {
                Assert.True(csv.Read());
                Assert.Equal((student.Who.Id, student.Who.Name, OutcomeWords.Of(student.Status)), (csv["id"], csv["name"], csv["status"]));
                Assert.Equal((student.Points, student.OutOf), (csv.GetField<decimal>("points"), csv.GetField<decimal>("out of")));
                // A cell that a spreadsheet would take for a formula has an apostrophe before it.
                Assert.Equal(student.File ?? "", csv["file"]!.TrimStart('\''));
                foreach (var answer in student.Answers)
                    Assert.Equal(
                        answer.IsUndecided ? null : Math.Round(answer.Points, 2, MidpointRounding.AwayFromZero),
                        csv.GetField<decimal?>($"{answer.Exercise.Id}.{answer.Part.Id}")
                    );
            }
            Assert.False(csv.Read());
        }
    }

    /// <summary>grades.json as it was written before it held facts and the deal.</summary>
    private static string Earlier(ClassGrades grades)
    {
        var root = JsonNode.Parse(GradesJson.Write(grades))!.AsObject();
        foreach (var later in (string[])["deal", "typed", "unreadGradebooks"])
            root.Remove(later);
        Take(root["due"], "reading");
        foreach (var file in root["files"]!.AsArray())
            Take(file, "why", "otherDeal", "fault");
        foreach (var student in root["students"]!.AsArray())
        {
            Take(student!["late"], "by");
            foreach (var flag in student["flags"]!.AsArray())
                Take(flag, "fact");
            foreach (var answer in student["answers"]!.AsArray())
                Take(answer, "isError", "findings", "ownEarlier");
        }
        return root.ToJsonString();

        static void Take(JsonNode? from, params string[] later)
        {
            foreach (var name in later)
                (from as JsonObject)?.Remove(name);
        }
    }

    [Fact]
    public void A_record_of_an_earlier_version_is_read_with_all_that_it_holds()
    {
        var (dealt, graded) = DemoGraded.Value;
        var back = GradesJson.Read("grades.json", Earlier(graded.Grades), dealt).Model!;

        Assert.Empty(GradeComparison.Between(back, graded.Grades));
        Assert.Equal(graded.Grades.Due?.At, back.Due?.At);
        Assert.Empty(Differences.Between(graded.Grades.Judging, back.Judging));
        Assert.Equal(graded.Grades.Students.Select(student => student.Points), back.Students.Select(student => student.Points));
        Assert.Equal(
            graded.Grades.Files.Select(file => (file.File, file.Digest, file.Fate)),
            back.Files.Select(file => (file.File, file.Digest, file.Fate))
        );
        Assert.Equal(
            graded.Grades.Students.SelectMany(student => student.Answers).Select(answer => answer.Misconception?.Words),
            back.Students.SelectMany(student => student.Answers).Select(answer => answer.Misconception?.Words)
        );
    }

    [Fact]
    public void Even_without_the_deal_it_says_who_earned_what_for_which_part()
    {
        // Records without the deal are older than parts that are answered by choosing or in words.
        var all = DemoGraded.Value.Graded.Grades;
        var grades = all with
        {
            Students =
            [
                .. all.Students.Select(student => student with { Answers = [.. student.Answers.Where(answer => answer.Part.IsNumber)] }),
            ],
        };
        var read = GradesJson.Read("grades.json", Earlier(grades), null);
        Assert.True(read.Succeeded, string.Join('\n', read.Problems));

        Assert.Equal(Earned(grades), Earned(read.Model));

        static List<object> Earned(ClassGrades of) =>
            [
                .. of.Students.Select(student => (object)(student.Who.Id, student.Points, student.OutOf)),
                .. of
                    .Students.SelectMany(student => student.Answers)
                    .Select(answer =>
                        (object)(answer.Exercise.Id, answer.Part.Id, answer.Outcome, answer.Points, answer.OutOf, answer.Misconception?.Id)
                    ),
            ];
    }

    [Fact]
    public void A_total_that_an_early_record_states_stands_whatever_its_answers_come_to()
    {
        var grades = DemoGraded.Value.Graded.Grades;
        var first = grades.Students.First(student => student.HasPoints && student.Late is null);
        var text = Earlier(
            grades with
            {
                Students =
                [
                    first with
                    {
                        Stated = (first.Points - 0.25m, first.OutOf),
                    },
                    .. grades.Students.Where(student => student != first),
                ],
            }
        );

        Assert.Equal(first.Points - 0.25m, GradesJson.Read("grades.json", text, DemoGraded.Value.Dealt).Model!.Students[0].Points);
    }

    [Fact]
    public void What_only_later_versions_know_is_left_out_and_the_rest_is_read()
    {
        var grades = DemoGraded.Value.Graded.Grades;
        var root = JsonNode.Parse(GradesJson.Write(grades))!;
        var answer = root["students"]!.AsArray().First(student => student!["answers"]!.AsArray().Count > 0)!["answers"]![0]!;
        answer["findings"]!.AsArray().Insert(0, new JsonObject { ["kind"] = "seen-in-a-dream", ["by"] = 3 });
        answer["tomorrow"] = true;

        var reading = GradesJson.Read("grades.json", root.ToJsonString(), DemoGraded.Value.Dealt);

        Assert.Empty(reading.Problems);
        Assert.Empty(Differences.Between(grades, reading.Model));
    }

    [Fact]
    public void A_fact_that_names_nobody_of_the_class_is_refused_with_what_it_names()
    {
        var grades = DemoGraded.Value.Graded.Grades;
        var root = JsonNode.Parse(GradesJson.Write(grades))!;
        root["students"]![0]!["flags"]!
            .AsArray()
            .Add(
                new JsonObject
                {
                    ["code"] = FlagCodes.SharedAuthor,
                    ["message"] = "",
                    ["fact"] = new JsonObject { ["kind"] = FlagCodes.SharedAuthor, ["others"] = new JsonArray("nobody-here") },
                }
            );

        var problem = Assert.Single(GradesJson.Read("grades.json", root.ToJsonString(), DemoGraded.Value.Dealt).Problems);
        Assert.Contains("“nobody-here”, who is not in the class", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Grades_of_another_deal_are_refused_where_a_deal_is_named()
    {
        using var folder = new TemporaryFolder();
        folder.Write("dealt/dealt.json", Encoding.UTF8.GetBytes(DealtJson.Write(SmallClass.Deal(seed: 12))));
        folder.Write("graded/grades.json", Encoding.UTF8.GetBytes(GradesJson.Write(AnyGrades.Of(Small, 1) with { Dealt = Small })));

        var refused = new RegradePaths(new(folder.Of("dealt"), folder.Of("returned")) { Graded = folder.Of("graded") }).Read();

        Assert.Contains($"grades of deal {Small.Identity!.Code}", Assert.Single(refused.Problems).Found, StringComparison.Ordinal);
    }

    /// <summary>The words are those of files that lie on disks: a new kind adds one, and none changes.</summary>
    [Fact]
    public void Facts_keep_their_words()
    {
        Assert.Equal(
            "right right-typed right-in-text not-following follows-through waits wrong-turn other-unit off-by-tens rounds-answer rounds-earlier rounds-within typed-rounded typed-from-rounded near-miss not-right "
                + "error-value empty no-workbook not-evaluated broken-formula names-no-cell lacks-equals-sign no-number no-option option-in-words wrote makes-text hundredfold-percent impossible stood-as-text",
            string.Join(' ', FindingShapes.All.Words)
        );
        Assert.Equal(
            "given-overwritten file-name-differs numbers-of-another under-other-name owner-inferred other-sheet saved-unknown late saved-unclear saved-after-it-came several-files paper-beside-file other-deal deal-doubtful formula-to-look-at fits-another-variant shared-mistakes shared-author unreadable-file",
            string.Join(' ', FlagShapes.All.Words)
        );
        Assert.Equal("not-read of-nobody of-other-deal copy other-version", string.Join(' ', UncountedShapes.All.Words));
        Assert.Equal(
            "too-many-steps too-many-steps-together array-too-large array-beyond-sheet too-many-areas nested-too-deeply circle may-be-macro unknown-function no-function arguments changes-each-time no-name "
                + "name-without-formula name-of-itself no-sheet no-cells no-tables in-no-table no-table no-column no-formula not-evaluated number-format numbered-reference formula-criterion",
            string.Join(' ', ObstacleShapes.All.Words)
        );
        Assert.Equal(
            "empty only-zeros cut-off password-protected other-kind damaged too-large oversized leftover link far-folder packed unopened",
            string.Join(' ', RefusalShapes.All.Words)
        );
        Assert.Equal(
            "archive unpacking checksum no-xml broken-xml no-sheets nowhere-sheet missing-sheet row-number cell-name beyond-sheet shared-formula missing-text no-number",
            string.Join(' ', DamageShapes.All.Words)
        );
        Assert.Equal("refused no-gradebook no-points no-answers unopened", string.Join(' ', GradebookShapes.All.Words));
        Assert.Equal("not-dealt out-of-range other-name otherwise-corrected", string.Join(' ', GradebookShapes.Points.Words));
        Assert.Equal(
            "says-when newer other-is-empty other-is-named not-all-say-when earns-as-much earns-most",
            string.Join(' ', UncountedShapes.Because.Words)
        );
        Assert.Equal("nearest up down towards-zero", Words<RoundingDirection>());
        Assert.Equal("no-digit word character second-number marks too-long", Words<UnreadableKind>());
        Assert.Equal("of-the-class follow-up practice rehearsal graded-work lesson class unmarked", Words<OtherDealKind>());
        Assert.Equal("plain zone-assumed skipped twice", Words<DueReading>());

        static string Words<T>()
            where T : struct, Enum => string.Join(' ', Enum.GetValues<T>().Select(KindWords.Of));
    }
}
