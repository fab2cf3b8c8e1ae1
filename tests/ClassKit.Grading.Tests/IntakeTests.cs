using ClassKit.Exercises.Draws;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

public sealed class IntakeTests
{
    private static ReturnedBook Full(Exercises.Dealing.DealtStudent student) =>
        new ReturnedBook(student).Answer("sum", "=flour+room+friction").Answer("temperature", "=3*want-sum");

    [Fact]
    public void A_workbook_is_whose_it_says_inside_and_a_contrary_name_is_flagged()
    {
        var grades = ClassGrader.Grade(Class, [Full(Ada).As("ben-okoye.xlsx"), Full(Ben).As("ada-berg.xlsx")]);

        Assert.Equal(["ben-okoye.xlsx", "ada-berg.xlsx", null], grades.Students.Select(student => student.File));
        Assert.All(grades.Students.Take(2), student => Assert.Equal(FlagCodes.NameDiffers, Assert.Single(student.Flags).Code));
        Assert.Equal(GradeStatus.Missing, grades.Students[2].Status);
        Assert.Empty(grades.Unmatched);
    }

    /// <summary>
    /// Whether the copy or the student's own file counts: the one named in it has sent nothing, and is connected with it.
    /// </summary>
    [Theory]
    [InlineData("cleo-marin.xlsx", "Ben Okoye.xlsx")]
    [InlineData("cleo-marin.xlsx", "ben/answers.xlsx")]
    [InlineData("zz cleo-marin.xlsx", "a/Okoye, Ben.xlsx")]
    public void A_file_that_bears_anothers_name_is_connected_with_both(string own, string other)
    {
        var grades = ClassGrader.Grade(
            Class,
            [Full(Cleo).As(own), Full(Cleo).As(other), Full(Ada).As("ada-berg.xlsx"), Full(Ada).As("ada-berg (1).xlsx")]
        );

        var misnamed = MisnamedFile.In(grades);
        if (other.StartsWith("ben/", StringComparison.Ordinal))
            Assert.Empty(misnamed);
        else
            Assert.Equal(
                (other, "ben-okoye", "cleo-marin", true),
                Assert.Single(misnamed) is var one ? (one.File.File, one.Named.Id, one.Owner.Id, one.HasOther) : default
            );
        Assert.All(MisnamedFile.In(ClassGrader.Grade(Class, [Full(Ada).As("ben-okoye.xlsx"), Full(Ben).As("ada-berg.xlsx")])), swapped =>
            Assert.False(swapped.HasOther)
        );
    }

    /// <summary>A copy of somebody's workbook under another's first name is asked about where nothing came from that one.</summary>
    [Fact]
    public void A_copy_under_another_first_name_is_asked_about_where_nothing_came_from_that_one()
    {
        IReadOnlyList<MisnamedFile> Of(params ReturnedFile[] files) => MisnamedFile.In(ClassGrader.Grade(Class, files));

        var one = Assert.Single(Of(Full(Cleo).As("cleo-marin.xlsx"), Full(Cleo).As("Ben.xlsx")));
        Assert.Equal(("Ben.xlsx", "ben-okoye", "cleo-marin", true), (one.File.File, one.Named.Id, one.Owner.Id, one.HasOther));
        Assert.Empty(Of(Full(Cleo).As("cleo-marin.xlsx"), Full(Cleo).As("Ben.xlsx"), Full(Ben).As("work.xlsx")));
        Assert.Empty(Of(Full(Cleo).As("Ben.xlsx")));
        Assert.Empty(Of(Full(Cleo).As("cleo-marin.xlsx"), Full(Cleo).As("Cleo final.xlsx")));
    }

    [Fact]
    public void Without_its_id_a_workbook_is_known_by_its_numbers()
    {
        var grade = ClassGrader.Grade(Class, [Full(Ben).WithoutId().As("final version (2).xlsx")]).Students[1];

        Assert.Equal(GradeStatus.Graded, grade.Status);
        Assert.Equal(FlagCodes.OwnerInferred, Assert.Single(grade.Flags).Code);
        Assert.Equal(Outcome.Sound, grade.Answers[0].Outcome);
    }

    [Fact]
    public void An_unreadable_file_is_its_students_if_its_name_says_so_and_unmatched_otherwise()
    {
        var grades = ClassGrader.Grade(
            Class,
            [new("Cleo Marin - homework.xlsx", null, new Refusal.CutOff()), new("IMG_2041.jpg", null, new Refusal.OtherKind(FileKind.Jpeg))]
        );

        Assert.Equal(GradeStatus.Unreadable, grades.Students[2].Status);
        Assert.Equal(
            new Flag.UnreadableFile(new("Cleo Marin - homework.xlsx"), new Refusal.CutOff()),
            Assert.Single(grades.Students[2].Flags)
        );
        Assert.Equal("IMG_2041.jpg", Assert.Single(grades.Unmatched).File);
    }

    [Fact]
    public void Of_several_versions_the_best_counts_and_all_are_accounted_for()
    {
        var grades = ClassGrader.Grade(
            Class,
            [
                new ReturnedBook(Ada).As("ada-berg.xlsx"),
                Full(Ada).As("ada-berg (1).xlsx"),
                new("ada-berg-old.xlsx", null, new Refusal.Empty()),
            ]
        );

        Assert.Equal("ada-berg (1).xlsx", grades.Students[0].File);
        Assert.Equal(["ada-berg-old.xlsx", "ada-berg.xlsx"], grades.Unmatched.Select(file => file.File));
        Assert.Contains(grades.Students[0].Flags, flag => flag.Code == FlagCodes.SeveralFiles);
    }

    [Fact]
    public void A_workbook_of_another_class_is_unmatched_with_the_reason()
    {
        var stranger = Ada with
        {
            Who = new("zoe-lam", "Zoe Lam"),
            Variants =
            [
                .. Ada.Variants.Select(variant =>
                    variant with
                    {
                        Givens = variant.Givens.ToDictionary(given => given.Key, given => given.Value + 1),
                    }
                ),
            ],
        };

        Assert.Equal(
            new Uncounted.OfNobody(Class.Cohort),
            Assert.Single(ClassGrader.Grade(Class, [Full(stranger).As("zoe.xlsx")]).Unmatched).Why
        );
    }

    [Fact]
    public void Answers_are_found_when_names_are_lost()
    {
        Assert.Equal(Outcome.Sound, Grade(Full(Ada).WithoutNames()).Answers[0].Outcome);
    }

    [Fact]
    public void Answers_are_found_when_a_script_moved_them_and_left_the_names_behind()
    {
        var grade = Grade(new ReturnedBook(Ada).Answer("ice_share", "=0.65*8/207").MoveWithoutNames("ice_share", 3));

        Assert.Equal(Outcome.ValueOnly, grade.Answers[3].Outcome);
    }

    [Fact]
    public void The_newest_counts_where_the_marking_scheme_says_so_by_what_the_workbook_says_of_itself()
    {
        var newest = Class with { Marking = Class.Marking with { Versions = Exercises.Marking.VersionChoice.Newest } };
        ReturnedFile[] files =
        [
            // The archive's time of the first is later: it was only downloaded again.
            Full(Ada).As("ada-berg.xlsx") with
            {
                Modified = new(2026, 3, 2, 9, 0, 0),
                Dated = new(2026, 3, 9),
            },
            new ReturnedBook(Ada).Answer("sum", "=flour+room").As("ada-berg (1).xlsx") with
            {
                Modified = new(2026, 3, 2, 10, 0, 0),
                Dated = new(2026, 3, 3),
            },
        ];

        var grades = ClassGrader.Grade(newest, files);

        Assert.Equal("ada-berg (1).xlsx", grades.Students[0].File);
        Assert.Equal("ada-berg.xlsx", ClassGrader.Grade(Class, files).Students[0].File);
        Assert.Equal(
            new WhyThatVersion.Newer(new(2026, 3, 2, 10, 0, 0), new(2026, 3, 2, 9, 0, 0)),
            Assert.IsType<Uncounted.OtherVersion>(grades.Unmatched[^1].Why).Because
        );
        Assert.Equal([FileFate.OtherVersion, FileFate.Graded], grades.Files.OrderByDescending(file => file.File).Select(file => file.Fate));
    }

    /// <summary>
    /// A folder's dates change when it is copied, so that the same files would earn another grade: where one of them does not say itself when
    /// it was saved, what they earn decides.
    /// </summary>
    [Theory]
    [InlineData(1, 9)]
    [InlineData(9, 1)]
    public void What_does_not_say_when_it_was_saved_is_not_compared_by_time(int one, int other)
    {
        var newest = Class with { Marking = Class.Marking with { Versions = Exercises.Marking.VersionChoice.Newest } };
        foreach (var order in new[] { false, true })
        {
            ReturnedFile[] files =
            [
                Full(Ada).As("ada-berg.xlsx") with
                {
                    Dated = new(2026, 3, one),
                },
                new ReturnedBook(Ada).Answer("sum", "=flour+room").As("ada-berg (1).xlsx") with
                {
                    Modified = new(2026, 3, 5),
                    Dated = new(2026, 3, other),
                },
                new ReturnedBook(Ada).Answer("sum", "=room").As("ada-berg (2).xlsx") with
                {
                    Modified = new(2026, 3, 6),
                },
            ];

            var grades = ClassGrader.Grade(newest, order ? files : files.Reverse());

            Assert.Equal("ada-berg.xlsx", grades.Students[0].File);
            Assert.All(grades.Unmatched, file =>
                Assert.Equal(new WhyThatVersion.NotAllSayWhen(), Assert.IsType<Uncounted.OtherVersion>(file.Why).Because)
            );
        }
    }

    /// <summary>Nine by some clock and ten in universal time may be either way round: what they earn decides.</summary>
    [Fact]
    public void Times_of_two_kinds_of_clocks_choose_no_version()
    {
        var newest = Class with { Marking = Class.Marking with { Versions = Exercises.Marking.VersionChoice.Newest } };
        string? Counts(DateTimeKind kind) =>
            ClassGrader
                .Grade(
                    newest,
                    [
                        Full(Ada).As("ada-berg.xlsx") with
                        {
                            Modified = new(2026, 3, 2, 9, 0, 0, kind),
                        },
                        new ReturnedBook(Ada).Answer("sum", "=flour+room").As("ada-berg (1).xlsx") with
                        {
                            Modified = new(2026, 3, 2, 10, 0, 0, DateTimeKind.Utc),
                        },
                    ]
                )
                .Students[0]
                .File;

        Assert.Equal("ada-berg (1).xlsx", Counts(DateTimeKind.Utc));
        Assert.Equal("ada-berg.xlsx", Counts(DateTimeKind.Unspecified));
    }

    /// <summary>Whichever way versions are chosen, and whenever they were saved.</summary>
    [Theory]
    [InlineData(Exercises.Marking.VersionChoice.Best)]
    [InlineData(Exercises.Marking.VersionChoice.Newest)]
    public void Neither_an_empty_workbook_nor_one_under_anothers_name_takes_the_place_of_their_own(Exercises.Marking.VersionChoice by)
    {
        var dealt = Class with { Marking = Class.Marking with { Versions = by } };
        ReturnedFile[] files =
        [
            new ReturnedBook(Ada).Answer("sum", "=flour+room+friction").As("ada-berg.xlsx") with
            {
                Modified = new(2026, 3, 2),
            },
            new ReturnedBook(Ada).As("ada-berg (1).xlsx") with
            {
                Modified = new(2026, 3, 3),
            },
            Full(Ada).As("ben-okoye.xlsx") with
            {
                Modified = new(2026, 3, 4),
            },
        ];

        var grades = ClassGrader.Grade(dealt, files);

        var (ada, ben) = (grades.Students[0], grades.Students[1]);
        Assert.Equal("ada-berg.xlsx", ada.File);
        Assert.Equal(GradeStatus.Missing, ben.Status);
        Assert.Equal(
            [new WhyThatVersion.OtherIsEmpty(), new WhyThatVersion.OtherIsNamed(Ben.Who)],
            grades.Unmatched.Select(file => Assert.IsType<Uncounted.OtherVersion>(file.Why).Because)
        );
        var said = new Flag.UnderOtherName(new("ben-okoye.xlsx"), Ben.Who, Ada.Who);
        Assert.Contains(said, ada.Flags);
        Assert.Contains(said, ben.Flags);
        Assert.DoesNotContain(ada.Flags, flag => flag is Flag.NameDiffers);
    }

    /// <summary>
    /// A friend's workbook with name and id typed over: told once as what it is, and not as so many numbers that somebody changed. Numbers
    /// tried out, or a class in which hardly anything differs, are told cell by cell.
    /// </summary>
    [Theory]
    [InlineData(6, true)]
    [InlineData(3, false)]
    public void A_workbook_that_holds_anothers_numbers_under_ones_own_id_is_told_as_that(int changed, bool whole)
    {
        var theirs = new Dictionary<string, decimal>(DoughTemperatureExercise.Published)
        {
            ["want"] = 77,
            ["flour"] = 68,
            ["room"] = 71,
            ["friction"] = 12,
            ["tap"] = 108,
            ["water"] = 22,
        };
        var dealt = Class with
        {
            Students =
            [
                Ada,
                Ben with
                {
                    Variants = [VariantGenerator.ForFreshInputs(DoughTemperatureExercise.Exercise).TryMake(theirs, out _)!],
                },
                Cleo,
            ],
        };
        var book = Full(Ada);
        foreach (var (given, value) in theirs.Where(given => given.Key != "share").Take(changed))
            book.Overwrite(given, (double)value);

        var ada = ClassGrader.Grade(dealt, [book.As("ada-berg.xlsx")]).Students[0];

        Assert.Equal(Outcome.Sound, ada.Answers[0].Outcome);
        if (whole)
            Assert.Equal(new Flag.NumbersOfAnother(new("ada-berg.xlsx"), Ada.Who, Ben.Who), Assert.Single(ada.Flags));
        else
            Assert.All(ada.Flags, flag => Assert.IsType<Flag.GivenOverwritten>(flag));
    }

    /// <summary>Where nothing else came it counts as it always did, and both are told.</summary>
    [Fact]
    public void What_came_under_anothers_name_alone_counts_and_is_told_to_both()
    {
        var grades = ClassGrader.Grade(Class, [Full(Ada).As("ben-okoye.xlsx")]);

        var said = new Flag.NameDiffers(new("ben-okoye.xlsx"), Ben.Who, Ada.Who);
        Assert.Equal("ben-okoye.xlsx", grades.Students[0].File);
        Assert.All(grades.Students.Take(2), student => Assert.Contains(said, student.Flags));
    }

    [Fact]
    public void The_same_file_sent_twice_is_called_the_same()
    {
        var grades = ClassGrader.Grade(
            Class,
            [Full(Ada).As("a/ada-berg.xlsx") with { Digest = "77" }, Full(Ada).As("b/ada-berg.xlsx") with { Digest = "77" }]
        );

        Assert.Equal("a/ada-berg.xlsx", grades.Students[0].File);
        Assert.Equal(new Uncounted.Copy(new("a/ada-berg.xlsx")), Assert.Single(grades.Unmatched).Why);
    }

    [Fact]
    public void What_programs_leave_behind_is_nobodys_and_flags_nobody()
    {
        var grades = ClassGrader.Grade(
            Class,
            [Full(Ada).As("ada-berg.xlsx"), new("~$ada-berg.xlsx", null, new Refusal.Leftover(LeftoverKind.LockFile))]
        );

        Assert.Empty(grades.Students[0].Flags);
        Assert.Equal((FileFate.Leftover, null), grades.Unmatched.Select(file => (file.Fate, file.Student)).Single());
    }

    [Fact]
    public void Grades_do_not_depend_on_the_order_in_which_files_are_judged()
    {
        ReturnedFile[] files =
        [
            Full(Ada).As("1.xlsx"),
            Full(Ada).As("2.xlsx"),
            Full(Ben).As("3.xlsx"),
            new("Ada Berg.pdf", null, new Refusal.OtherKind(FileKind.Pdf)),
            new("ada berg.jpg", null, new Refusal.OtherKind(FileKind.Jpeg)),
        ];

        var (forth, back) = (ClassGrader.Grade(Class, files), ClassGrader.Grade(Class, files.Reverse()));

        Assert.Equal(forth.Files, back.Files);
        Assert.Equal(forth.Students.Select(student => student.File), back.Students.Select(student => student.File));
    }
}
