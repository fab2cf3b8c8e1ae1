using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Grading;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>Only workbooks of the deal at hand are judged; others are named for what they are, and never displace the right one.</summary>
public sealed class OtherDealTests
{
    private static readonly DealtClass Seed12 = SmallClass.Deal(seed: 12);
    private static readonly DealtClass FollowUp = SmallClass.Deal(
        title: FollowUpTitle.Of(SmallClass.Dealt.LessonTitle),
        settings: new(DealPurpose.FollowUp, NumbersToAvoid.None)
    );
    private static readonly DealtClass Rehearsal = SmallClass.Deal(
        cohort: "Invented people",
        settings: new(DealPurpose.Rehearsal, NumbersToAvoid.None)
    );
    private static readonly DealtClass OtherLesson = SmallClass.Deal(title: "Another lesson");
    private static readonly DealtClass OtherClass = SmallClass.Deal(cohort: "Friday class");

    /// <summary>Lines of Python that take every code out, as a student who cleans up a workbook would.</summary>
    private const string WithoutCodes = """
        import re
        for s in w.worksheets:
            for row in s.iter_rows():
                for c in row:
                    if isinstance(c.value, str) and re.search(r'[2-9A-Z]{3}-[2-9A-Z]{4}', c.value): c.value = 'x'
        """;

    public static TheoryData<OtherDealKind> Kinds =>
        [OtherDealKind.OfTheClass, OtherDealKind.FollowUp, OtherDealKind.Rehearsal, OtherDealKind.Lesson, OtherDealKind.Class];

    private static DealtClass DealOf(OtherDealKind kind) =>
        kind switch
        {
            OtherDealKind.OfTheClass => Seed12,
            OtherDealKind.FollowUp => FollowUp,
            OtherDealKind.Rehearsal => Rehearsal,
            OtherDealKind.Lesson => OtherLesson,
            OtherDealKind.Class => OtherClass,
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    private static ClassGrades Grade(DealtClass dealt, params (string Name, byte[] Bytes)[] files) =>
        ClassGrader.Grade(dealt, files.Select(file => FileReading.Read(new(file.Name, file.Bytes, null))));

    private static byte[] OfAda(DealtClass dealt) => SmallClass.Filled(dealt, dealt.Students[0]);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_workbook_of_another_deal_is_named_for_what_it_is_and_costs_nothing(OtherDealKind kind)
    {
        var other = DealOf(kind);
        var grades = Grade(SmallClass.Dealt, ("ada-berg.xlsx", OfAda(other)));

        var file = Assert.Single(grades.Files);
        Assert.Equal((FileFate.OtherDeal, kind, other.Identity!.Code), (file.Fate, file.Other!.Kind, file.Other.Code));
        Assert.Equal(SmallClass.Dealt.Identity!.Code, Assert.IsType<Uncounted.OfOtherDeal>(file.Why).Code);
        Assert.Equal(GradeStatus.Missing, grades.Students[0].Status);
        Assert.Empty(grades.Students[0].Answers);
        Assert.Equal(FlagCodes.OtherDeal, Assert.Single(grades.Students[0].Flags).Code);
        Assert.Equal(
            other.Identity.Code,
            Assert.Single(GradeNotes.Of(GradeCommands.ResultOf(grades)).OfType<Note.OtherDeals>()).Mostly.Code
        );
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void It_never_displaces_the_right_workbook_even_where_that_earns_nothing(OtherDealKind kind)
    {
        var grades = Grade(
            SmallClass.Dealt,
            ("a/ada-berg.xlsx", OfAda(DealOf(kind))),
            ("b/ada-berg.xlsx", SmallClass.Blank(SmallClass.Ada))
        );

        Assert.Equal(("b/ada-berg.xlsx", GradeStatus.Graded), (grades.Students[0].File, grades.Students[0].Status));
        Assert.Equal([FileFate.OtherDeal, FileFate.Graded], grades.Files.Select(file => file.Fate));
        Assert.DoesNotContain(grades.Students[0].Flags, flag => flag.Code == FlagCodes.SeveralFiles);
        Assert.DoesNotContain(GradeNotes.Of(GradeCommands.ResultOf(grades)), note => note is Note.OtherDeals);
    }

    [Fact]
    public void Follow_up_practice_is_graded_against_its_own_deal_and_knows_the_graded_work_from_itself()
    {
        var grades = Grade(FollowUp, ("a.xlsx", OfAda(FollowUp)), ("b.xlsx", SmallClass.Filled(SmallClass.Ben)));

        Assert.All(grades.Students[0].Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome));
        Assert.Equal(OtherDealKind.GradedWork, grades.Files[1].Other!.Kind);
    }

    /// <summary>What is saved by both was saved by each.</summary>
    public static TheoryData<string> OtherPrograms =>
        Trials.All ? ["LibreOffice", "OpenDocument", "openpyxl", "both"] : ["OpenDocument", "both"];

    [Theory]
    [MemberData(nameof(OtherPrograms))]
    public void Identity_survives_saving_by_other_programs_in_more_than_one_place(string through)
    {
        byte[] Saved(byte[] workbook) =>
            through switch
            {
                "LibreOffice" => LibreOffice.SaveAgain(workbook),
                "OpenDocument" => LibreOffice.Convert(workbook, "ods"),
                "openpyxl" => OpenPyXl.Run(workbook, "").Saved,
                _ => LibreOffice.SaveAgain(OpenPyXl.Run(workbook, "").Saved),
            };

        var name = through == "OpenDocument" ? "w.ods" : "w.xlsx";
        var grades = Grade(SmallClass.Dealt, ("a-" + name, Saved(SmallClass.Filled(SmallClass.Ada))), ("b-" + name, Saved(OfAda(Seed12))));
        Assert.All(grades.Students[0].Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome));
        Assert.Equal((FileFate.OtherDeal, Seed12.Identity!.Code), (grades.Files[1].Fate, grades.Files[1].Other?.Code));

        // With the first sheet gone, those of the exercises still say it.
        var withoutStart = Grade(
            SmallClass.Dealt,
            (
                "c.xlsx",
                OpenPyXl
                    .Run(through == "OpenDocument" ? LibreOffice.SaveAgain(OfAda(Seed12)) : Saved(OfAda(Seed12)), "del w['Start here']")
                    .Saved
            )
        );
        Assert.Equal(Seed12.Identity!.Code, Assert.Single(withoutStart.Files).Other!.Code);
    }

    [Fact]
    public void Where_codes_are_gone_numbers_decide()
    {
        var grades = Grade(
            SmallClass.Dealt,
            ("a.xlsx", OpenPyXl.Run(SmallClass.Filled(SmallClass.Ada), WithoutCodes).Saved),
            ("b.xlsx", OpenPyXl.Run(SmallClass.Filled(Seed12, Seed12.Students[1]), WithoutCodes).Saved)
        );

        Assert.All(grades.Students[0].Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome));
        Assert.Empty(grades.Students[0].Flags);
        Assert.Equal((FileFate.OtherDeal, OtherDealKind.Unmarked), (grades.Files[1].Fate, grades.Files[1].Other!.Kind));
        Assert.Null(Assert.IsType<Uncounted.OfOtherDeal>(grades.Files[1].Why).Other.Code);
    }

    [Fact]
    public void A_deal_from_before_identities_grades_its_own_workbooks_by_their_numbers()
    {
        var old = SmallClass.Dealt with { Identity = null };
        var grades = Grade(old, ("a.xlsx", OfAda(old)), ("b.xlsx", SmallClass.Filled(Seed12 with { Identity = null }, Seed12.Students[1])));

        Assert.DoesNotContain("identity", DealtJson.Write(old), StringComparison.Ordinal);
        Assert.All(grades.Students[0].Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome));
        Assert.Equal(FileFate.OtherDeal, grades.Files[1].Fate);
    }

    [Fact]
    public void Sheets_of_two_deals_in_one_workbook_are_told_and_numbers_decide()
    {
        // The answers are the right deal's, the first sheet is from another.
        var code = Seed12.Identity!.Code;
        var mixed = OpenPyXl.Run(SmallClass.Filled(SmallClass.Ada), $"w['Start here']['C6'] = '{code}'").Saved;
        // The first sheet is the right one, the answers are another deal's.
        var swapped = OpenPyXl.Run(OfAda(Seed12), $"w['Start here']['C6'] = '{SmallClass.Dealt.Identity!.Code}'").Saved;

        var judged = Grade(SmallClass.Dealt, ("a.xlsx", mixed)).Students[0];
        var refused = Grade(SmallClass.Dealt, ("b.xlsx", swapped));

        Assert.All(judged.Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome));
        Assert.Contains(code, Assert.Single(judged.Flags.OfType<Flag.DealDoubtful>()).Others);
        Assert.Equal(FileFate.OtherDeal, Assert.Single(refused.Files).Fate);
    }

    [Fact]
    public void An_answer_sheet_carried_into_another_file_is_found_and_known()
    {
        var carried = OpenPyXl
            .Run(SmallClass.Filled(SmallClass.Ben), "del w['Start here']\nw.create_sheet('Shopping list', 0)['A1'] = 'flour'")
            .Saved;
        var grades = Grade(SmallClass.Dealt, ("list.xlsx", carried));

        Assert.Equal(GradeStatus.Graded, grades.Students[1].Status);
        Assert.All(grades.Students[1].Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome));
    }
}
