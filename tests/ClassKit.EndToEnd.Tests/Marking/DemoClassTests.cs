using System.Text.Json;
using ClassKit.Content.Rosters;
using ClassKit.DemoCohort;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Rehearsing;

namespace ClassKit.EndToEnd.Tests.Marking;

/// <summary>The grades of the demo class against what its invented students are known to have done.</summary>
public sealed class DemoClassTests(TourRun tour)
{
    private readonly DealtClass _dealt = DealtJson
        .Read("dealt.json", File.ReadAllText(Path.Combine(tour.Folder, "dealt", "dealt.json")))
        .Model!;

    public static TheoryData<string> Students => [.. DemoClass.Students.Select(student => student.Id)];

    [Theory]
    [MemberData(nameof(Students))]
    public void Each_student_gets_the_outcomes_that_the_script_says(string id)
    {
        var script = DemoClass.Students.Single(student => student.Id == id);
        var graded = Student(id);
        var status = graded.GetProperty("status").GetString();
        if (script.File is null)
        {
            Assert.Equal("missing", status);
            return;
        }
        if (script.Mishap is Mishap.Truncated or Mishap.NoWorkbook)
        {
            Assert.Equal("unreadable", status);
            return;
        }

        Assert.Equal("graded", status);
        Assert.Equal(script.File, graded.GetProperty("file").GetString());
        Assert.Equal(
            DemoClass
                .Answers(_dealt, script)
                .Select(answer => $"{answer.Exercise}.{answer.Part}: {OutcomeWords.Of(answer.Truth)} {answer.Misconception}"),
            graded
                .GetProperty("answers")
                .EnumerateArray()
                .Select(answer =>
                    $"{answer.GetProperty("exercise")}.{answer.GetProperty("part")}: {answer.GetProperty("outcome")} {answer.GetProperty("misconception")}"
                )
        );
    }

    [Fact]
    public void The_script_speaks_of_every_student_on_the_roster()
    {
        Assert.Equal(
            RosterReader.Read(Checkout.Demo.Roster).Model!.Students.Select(student => student.Id),
            DemoClass.Students.Select(student => student.Id)
        );
    }

    [Fact]
    public void The_script_acts_out_all_that_it_names()
    {
        // A way that does not fit falls back to a sound formula: then the script would tell less than it seems to.
        foreach (var student in DemoClass.Students.Where(student => student.File is not null))
        {
            var answers = DemoClass.Answers(_dealt, student).ToDictionary(answer => $"{answer.Exercise}.{answer.Part}");
            Assert.All(student.Answers, told => Assert.Equal(told.Value.Way, answers[told.Key].Way));
        }
    }

    [Fact]
    public void At_least_a_third_of_the_workbooks_passed_through_a_program_that_is_not_ours()
    {
        var readable = DemoClass
            .Students.Where(student => student.File is not null && student.Mishap is not (Mishap.Truncated or Mishap.NoWorkbook))
            .ToList();

        Assert.True(readable.Count(student => student.Through != OtherProgram.None) * 3 >= readable.Count);
    }

    [Fact]
    public void Who_went_wrong_alike_is_told_alike()
    {
        var alike = DemoClass
            .Students.Where(student => student.Answers.TryGetValue("oven_dial.oven_c", out var way) && way == (AnswerWay.UnlistedTurn, 0))
            .ToList();
        Assert.Equal(5, alike.Count);
        var told = alike.Select(student => Answer(student.Id, "oven_dial", "oven_c").GetProperty("findings")[0]).ToList();
        Assert.All(told, finding => Assert.Equal("near-miss", finding.GetProperty("kind").GetString()));
        Assert.Single(told.Select(finding => finding.GetProperty("edits").GetRawText()).Distinct());
    }

    [Fact]
    public void Groups_that_were_made_are_found_with_words_where_there_are_any()
    {
        var proposed = File.ReadAllText(Path.Combine(tour.Folder, "graded", "proposed-misconceptions.md"));
        Assert.Equal(
            ["## hydration: all_water", "## oven_dial: oven_c", "## yeast: extra_water"],
            proposed.Split('\n').Where(line => line.StartsWith("## ", StringComparison.Ordinal)).Order(StringComparer.Ordinal)
        );
        Assert.Contains("Met by 5 of", proposed, StringComparison.Ordinal);
        Assert.Equal(
            "not-right",
            Answer("yael-oconnor", "hydration", "all_water").GetProperty("findings")[0].GetProperty("kind").GetString()
        );
    }

    [Theory]
    [InlineData("goran-petrovic", FlagCodes.NameDiffers)]
    [InlineData("hana-sato", FlagCodes.NameDiffers)]
    [InlineData("min-jun-park", FlagCodes.GivenOverwritten)]
    [InlineData("noor-rahman", FlagCodes.UnreadableFile)]
    [InlineData("oisin-brennan", FlagCodes.UnreadableFile)]
    public void What_the_instructor_should_see_is_flagged(string id, string code)
    {
        Assert.Contains(Student(id).GetProperty("flags").EnumerateArray(), flag => flag.GetProperty("code").GetString() == code);
    }

    private JsonElement Answer(string student, string exercise, string part) =>
        Student(student)
            .GetProperty("answers")
            .EnumerateArray()
            .Single(answer => answer.GetProperty("exercise").GetString() == exercise && answer.GetProperty("part").GetString() == part);

    private JsonElement Student(string id) =>
        tour.Grades.GetProperty("students").EnumerateArray().Single(student => student.GetProperty("id").GetString() == id);
}
