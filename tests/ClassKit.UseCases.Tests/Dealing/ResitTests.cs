using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>
/// A smaller set has a total of its own, who is excused is dealt nothing, and a resit is a deal of its own that says what it replaces.
/// </summary>
public sealed class ResitTests
{
    private static readonly PracticeSet Set = PracticeSet.Of(SmallClass.Lesson) with
    {
        Exercises = [.. SmallClass.Lesson.Exercises.Take(2)],
    };

    private static readonly string Second = Set.Exercises[1].Id;

    private static Roster Class(params (string Student, Arrangement Arrangement)[] arranged) =>
        new("Invented class", [new("ada-berg", "Ada Berg"), new("ben-okoye", "Ben Okoye")])
        {
            Arrangements = arranged.ToDictionary(one => one.Student, one => one.Arrangement),
        };

    private static Content.Diagnostics.Reading<DealMade> Deal(Roster roster, DealtClass? replaces = null, DealtClass? before = null) =>
        DealPractice.Run(
            new(Set, roster, new(SetWish.None, IsSpread: false, 11))
            {
                Replaces = replaces,
                Earlier = before is null ? EarlierDeal.None : new(null, before),
            },
            Run.Unwatched
        );

    private static Arrangement Without(params string[] exercises) => Arrangement.None with { LeavesOut = exercises };

    private static Arrangement Excused(params string[] works) => Arrangement.None with { ExcusedFrom = works };

    private static ClassGrades Grade(DealtClass dealt) =>
        GradeClass
            .Run(
                new(
                    dealt,
                    ReturnedFiles.Of([
                        .. dealt.Students.Select(student => new Upload($"{student.Who.Id}.xlsx", () =>
                            new MemoryStream(SmallClass.Filled(dealt, student))
                        )),
                    ])
                ),
                Run.Unwatched
            )
            .Grades;

    /// <summary>A set that was chosen of a bank is not the whole bank when one of the class sits it again.</summary>
    [Fact]
    public void A_resit_is_of_the_exercises_that_were_dealt_unless_others_are_asked_for()
    {
        using var folder = new TemporaryFolder();
        DealPaths Paths(params string[] named) =>
            new(
                Repository.PathOf("lessons", "practice"),
                Repository.PathOf("demo-cohort", "roster.csv"),
                new(SetWish.None with { Exercises = named }, IsSpread: false, 11)
            );
        string[] exercises = ["ice_in_pounds", "four_factors"];
        OutputFolder.Write(
            folder.Of("dealt"),
            DealPractice.Kind,
            DealPaths.Write(DealPractice.Run(Paths(exercises).Read().Model!, Run.Unwatched).Model!).Files
        );
        DealPaths Again(params string[] named) => Paths(named) with { ResitOf = folder.Of("dealt"), Only = ["bao-nguyen"] };

        Assert.Equal(exercises, Again().Read().Model!.Set.Exercises.Select(exercise => exercise.Id));
        Assert.Equal(exercises[..1], Again(exercises[0]).Read().Model!.Set.Exercises.Select(exercise => exercise.Id));
    }

    private static List<string> Said(byte[] workbook) =>
        [
            .. ReturnedWorkbookReader
                .Read(workbook)
                .Workbook!.Sheets.SelectMany(sheet => sheet.Cells.Values)
                .Where(cell => cell.Stored.IsText)
                .Select(cell => cell.Stored.Text),
        ];

    private static byte[] File(DealMade deal, string path) => DealFiles.Of(deal).Single(file => file.Path == path).Content;

    [Fact]
    public void A_smaller_set_is_dealt_kept_and_graded_with_its_own_total_and_changes_nobody_elses_numbers()
    {
        var (plain, less) = (Deal(Class()).Model!, Deal(Class(("ada-berg", Without(Second, "no_such_one")))).Model!);

        Assert.Equal(plain.Dealt.Identity, less.Dealt.Identity);
        Assert.All(Set.Exercises, exercise =>
            Assert.Equal(plain.Dealt.Students[1].GivensOf(exercise.Id), less.Dealt.Students[1].GivensOf(exercise.Id))
        );
        Assert.Equal(Said(File(plain, "workbooks/ben-okoye.xlsx")), Said(File(less, "workbooks/ben-okoye.xlsx")));
        Assert.Equal(File(plain, "workbooks/ben-okoye.xlsx"), File(less, "workbooks/ben-okoye.xlsx"));
        Assert.Equal([Set.Exercises[0].Id], less.Dealt.Students[0].Variants.Select(variant => variant.Exercise.Id));
        Assert.Equal(["no_such_one"], Assert.Single(DealNotes.Of(less).OfType<Note.LeavesOutNothing>()).Ids);
        var read = DealtJson.Read("dealt.json", DealtJson.Write(less.Dealt)).Model!;
        Assert.Equal([Second], read.Students[0].LeavesOut);

        var grades = Grade(read);
        Assert.Equal(
            [Set.Exercises[0].Parts.Sum(part => part.Points), Set.Exercises.Sum(exercise => exercise.Parts.Sum(part => part.Points))],
            grades.Students.Select(student => student.OutOf)
        );
        Assert.All(grades.Students, student => Assert.Equal(student.OutOf, student.Points));
    }

    [Fact]
    public void Who_holds_a_workbook_keeps_what_is_in_it_and_who_leaves_out_everything_is_asked_about()
    {
        var later = Deal(Class(("ada-berg", Without(Second))), before: Deal(Class()).Model!.Dealt).Model!.Dealt;
        Assert.Equal(2, later.Students[0].Variants.Count);
        Assert.Empty(later.Students[0].LeavesOut);

        Assert.Contains(
            "`ada-berg` leaves out every exercise",
            Assert.Single(Deal(Class(("ada-berg", Without([.. Set.Exercises.Select(exercise => exercise.Id)])))).Problems).Found,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Who_is_excused_is_dealt_nothing_and_named_and_a_class_of_nobody_is_refused()
    {
        var deal = Deal(Class(("ada-berg", Excused(Set.Id)))).Model!;
        Assert.Equal(["ben-okoye"], deal.Dealt.Students.Select(student => student.Who.Id));
        Assert.Equal(["ada-berg"], Assert.Single(DealNotes.Of(deal).OfType<Note.ExcusedFrom>()).Students.Select(student => student.Id));
        Assert.Equal(2, Deal(Class(("ada-berg", Excused("another-lesson")))).Model!.Dealt.Students.Count);

        Assert.Contains(
            "Everybody",
            Assert.Single(Deal(Class(("ada-berg", Excused(Set.Title)), ("ben-okoye", Excused(Set.Id)))).Problems).Found,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_resit_is_another_deal_with_other_numbers_and_everything_says_of_what()
    {
        var first = Deal(Class()).Model!.Dealt;
        var made = Deal(Class(), replaces: first).Model!;
        var (again, code) = (made.Dealt, first.Identity!.Code);

        Assert.NotEqual(first.Identity, again.Identity);
        Assert.Equal(first.Identity, again.Replaces);
        Assert.All(first.Students.Zip(again.Students), pair =>
            Assert.All(Set.Exercises, exercise => Assert.NotEqual(pair.First.GivensOf(exercise.Id), pair.Second.GivensOf(exercise.Id)))
        );
        Assert.Equal(first.Identity, DealtJson.Read("dealt.json", DealtJson.Write(again)).Model!.Replaces);
        Assert.Contains(Said(File(made, "workbooks/ada-berg.xlsx")), text => text == $"{again.Identity!.Code} · resit of {code}");
        Assert.Contains(
            $"resit of {code}",
            System.Text.Encoding.UTF8.GetString(File(made, "sheets/ada-berg.html")),
            StringComparison.Ordinal
        );
        Assert.Equal((code, 2), (Assert.Single(DealNotes.Of(made).OfType<Note.Resit>()).Replaced, made.Dealt.Students.Count));

        // The code of the first sitting on a resit's workbook must not make it work of another deal.
        Assert.All(Grade(again).Students, student => Assert.Equal(student.OutOf, student.Points));
    }

    [Fact]
    public void A_resit_of_another_lesson_or_class_is_refused()
    {
        var first = Deal(Class()).Model!.Dealt;
        Assert.Contains(
            "to be sat again",
            Assert.Single(Deal(Class() with { Cohort = "Others" }, replaces: first).Problems).Found,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "to be sat again",
            Assert.Single(Deal(Class(), replaces: first with { Lesson = "other" }).Problems).Found,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("replaces", DealtJson.Write(first), StringComparison.Ordinal);
    }
}
