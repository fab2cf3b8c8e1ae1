using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Foresight;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.Records.Gradings;
using ClassKit.Records.Storage;
using ClassKit.Terms.Difficulty;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Difficulty;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Filling;

namespace ClassKit.UseCases.Tests.Difficulty;

/// <summary>Answers of earlier classes come from the record and from grades alike, and are counted once.</summary>
public sealed class PastWorksTests
{
    private static readonly ClassGrades Grades = GradeClass
        .Run(
            new(
                SmallClass.Dealt,
                ReturnedFiles.Of(
                    new("ada-berg.xlsx", () => new MemoryStream(SmallClass.Filled(SmallClass.Ada))),
                    new("ben-okoye.xlsx", () => new MemoryStream(SmallClass.Blank(SmallClass.Ben)))
                )
            ),
            Run.Unwatched
        )
        .Grades;

    [Fact]
    public void The_record_and_the_grades_say_the_same()
    {
        using var record = TeachingRecord.InMemory();
        EnterGrades.Run(new(record, new(new(2026, 11, 29, 12, 0, 0, TimeSpan.Zero), "Kim", ""), null, Grades), Run.Unwatched);

        var recorded = PastWorks.Of(record.Read(PastAnswerRow.All)).ToList();
        var graded = PastWorks.Of(Grades).ToList();

        Assert.NotEmpty(graded);
        Assert.Equal(graded.Select(work => work.Deal), recorded.Select(work => work.Deal));
        Assert.Equal(graded.SelectMany(work => work.Answers), recorded.SelectMany(work => work.Answers));
        Assert.Contains(graded.SelectMany(work => work.Answers), answer => answer.IsGot);
        Assert.Contains(graded.SelectMany(work => work.Answers), answer => !answer.IsGot);
    }

    /// <summary>Over the exercise's names, so that classes with other numbers and other cells can be counted together.</summary>
    [Fact]
    public void What_nobody_listed_is_remembered_too()
    {
        var exercise = SmallClass.Dealt.Exercises.Single(one => one.Id == "hydration");
        var sheet = new AnswerSheet(SmallClass.Layout.Of(exercise.Id), SmallClass.Ben, ForeseenTurns.Of(exercise));
        var file = WorkbookFiller.Fill(
            SmallClass.Blank(SmallClass.Ben),
            Returning.Edits(SmallClass.Layout, [sheet.Answer(exercise.Parts[0], AnswerWay.UnlistedTurn)])
        );
        var grades = GradeClass
            .Run(new(SmallClass.Dealt, ReturnedFiles.Of([new("ben-okoye.xlsx", () => new MemoryStream(file))])), Run.Unwatched)
            .Grades;
        using var record = TeachingRecord.InMemory();
        EnterGrades.Run(new(record, new(new(2026, 11, 29, 12, 0, 0, TimeSpan.Zero), "Kim", ""), null, grades), Run.Unwatched);

        var proved = PastDifficulty.Of([.. PastWorks.Of(record.Read(PastAnswerRow.All))]).Of(new(exercise.Id, exercise.Parts[0].Id))!;

        var (formula, times) = Assert.Single(proved.NearMisses);
        Assert.Equal(1, times);
        Assert.Contains("flour", formula, StringComparison.Ordinal);
        Assert.Empty(proved.WrongTurns);
    }

    [Fact]
    public void A_deal_by_what_earlier_classes_earned_says_what_can_be_expected()
    {
        var set = PracticeSet.Of(SmallClass.Lesson);
        var wish = new DealWish(SetWish.None, IsSpread: false, 5);
        var roster = new Roster("Invented class", [.. SmallClass.Dealt.Students.Select(seat => seat.Who)]);
        var known = DealNotes.Of(
            DealPractice.Run(new(set, roster, wish) { Past = PastDifficulty.Of([.. PastWorks.Of(Grades)]) }, Run.Unwatched).Model!
        );
        var none = DealNotes.Of(DealPractice.Run(new(set, roster, wish) { Past = PastDifficulty.Of([]) }, Run.Unwatched).Model!);

        var expected = Assert.IsType<Note.Expected>(Assert.Single(known, note => note is Note.Expected));
        Assert.InRange(expected.High, expected.Low, expected.OutOf);
        Assert.Equal((double)set.Exercises.Sum(SetChooser.PointsOf), expected.OutOf + expected.Unknown);
        Assert.Contains(none, note => note is Note.NothingExpected);
    }

    [Fact]
    public void Where_nothing_is_named_it_is_said_what_to_name() =>
        Assert.Contains(
            "Name the record",
            Assert.Single(ShowDifficulty.Read("lessons", SetWish.None, new(null, [], default), null).Problems).Expected,
            StringComparison.Ordinal
        );
}
