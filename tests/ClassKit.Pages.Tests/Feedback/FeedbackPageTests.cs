using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Feedback;

public sealed class FeedbackPageTests
{
    private static StudentGrade Student(string id) => SampleClass.Grades.Students.First(student => student.Who.Id == id);

    private static AngleSharp.Dom.IDocument Page(StudentGrade grade) => Html.Parse(HtmlPages.Feedback(grade, SampleClass.Dealt));

    [Fact]
    public void Names_stand_on_the_page_as_they_are_written()
    {
        foreach (var grade in SampleClass.Grades.Students)
            Assert.Contains($"<h1>{grade.Who.Name}</h1>", HtmlPages.Feedback(grade, SampleClass.Dealt), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_part_has_its_outcome_in_words_its_points_and_a_worked_solution()
    {
        var grade = Student("s02");
        var parts = Page(grade).QuerySelectorAll("section.part");

        Assert.Equal(grade.Answers.Count, parts.Length);
        foreach (var (part, answer) in parts.Zip(grade.Answers))
        {
            Assert.Contains(answer.Part.Ask, part.QuerySelector("h3")!.Text(), StringComparison.Ordinal);
            Assert.NotEqual("", part.QuerySelector(".outcome span")!.Text());
            Assert.Equal(2, part.QuerySelectorAll(".solution math").Length - (answer.OwnEarlierAnswers.Count > 0 ? 1 : 0));
            Assert.Contains($" of {answer.OutOf} point", part.QuerySelector(".verdict")!.Text(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_first_slip_and_what_was_carried_on_from_it_are_named() =>
        Assert.Contains(
            "The first slip is in part a. Part b carries it on with the right method, so it still earns its credit.",
            Page(Student("s02")).QuerySelector("main")!.Text(),
            StringComparison.Ordinal
        );

    [Fact]
    public void The_solution_with_the_students_own_earlier_answer_is_shown_beside_the_right_one()
    {
        var part = Page(Student("s02")).QuerySelector("#part-ddt-ice")!.Closest("section")!;
        Assert.Contains("With your own earlier answer:", part.Text(), StringComparison.Ordinal);
        Assert.Contains("Judged with your own 25.9 °C from part a.", part.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_student_typed_is_shown_as_text_and_never_as_html()
    {
        var answers = SampleClass.Grades.Students.SelectMany(student => student.Answers.Select(answer => (student, answer)));
        var (student, typed) = answers.First(entry => entry.answer.Outcome == Outcome.Unreadable);
        var page = Page(student);

        Assert.Empty(page.QuerySelectorAll("main b"));
        Assert.Contains(typed.Value.Text, page.QuerySelector("main")!.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_hostile_name_stays_a_name()
    {
        var grade = Student("s01");
        var named = grade with { Who = new(grade.Who.Id, "</style><script>alert(1)</script>") };
        var page = Page(named);

        Assert.Empty(page.QuerySelectorAll("script"));
        Assert.Equal("</style><script>alert(1)</script>", page.QuerySelector("h1")!.TextContent);
    }

    [Fact]
    public void In_a_percent_cell_sixty_five_is_shown_as_percent()
    {
        var grade = Student("s01");
        var share = grade.Answers.First(answer => answer.Part.Id == "share");
        var typed = share with { Value = CellFormulas.Values.CellValue.FromNumber(share.Expected * 100) };

        var page = Page(grade with { Answers = [.. grade.Answers.Select(answer => answer == share ? typed : answer)] });

        var shown = page.QuerySelector("#part-hydration-share")!
            .Closest("section")!
            .QuerySelectorAll(".answers dd")
            .Select(entry => entry.Text())
            .ToList();
        Assert.Equal(shown[^1], shown[0]);
    }

    [Fact]
    public void One_thing_behind_several_wrong_numbers_is_told_once()
    {
        var grade = Student("s01");
        // A multiple of degrees means nothing.
        var three = grade.Answers.Where(answer => answer.Part.Unit.Sign is not ("°C" or "°F")).Take(3).ToHashSet();
        Assert.Equal(3, three.Count);
        var tooLarge = grade.Answers.Select(answer =>
            three.Contains(answer)
                ? answer with
                {
                    Outcome = Outcome.Incorrect,
                    Value = CellFormulas.Values.CellValue.FromNumber(answer.Expected * 1.37),
                    Findings = [new AnswerFinding.NotRight()],
                }
                : answer
        );

        Assert.Contains(
            "are each 1.37 times what is right",
            Page(grade with { Answers = [.. tooLarge] }).QuerySelector("main")!.Text(),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("times what is right", Page(grade).QuerySelector("main")!.Text(), StringComparison.Ordinal);
    }

    /// <summary>What the instructor has decided is no longer to be put right, whatever the grader had found of it.</summary>
    [Fact]
    public void What_the_instructor_has_corrected_is_settled()
    {
        var grade = Student("s02");
        var slip = grade.Answers.First(answer => answer.Outcome is Outcome.Misconception or Outcome.Incorrect);
        var before = Page(grade).QuerySelector("main")!.Text();
        Assert.Contains("The first slip is in part a.", before, StringComparison.Ordinal);

        var page = Page(
            grade with
            {
                Answers =
                [
                    .. grade.Answers.Select(answer =>
                        answer == slip ? answer with { Points = 1, Correction = new(0, "Shown at the bench") } : answer
                    ),
                ],
            }
        );

        Assert.DoesNotContain(page.QuerySelectorAll(".put-right .ask"), ask =>
            ask.Text().Contains(slip.Part.Ask, StringComparison.Ordinal)
        );
        Assert.DoesNotContain(page.QuerySelectorAll(".missed-part"), missed =>
            missed.Text().Contains(slip.Part.Ask, StringComparison.Ordinal)
        );
        Assert.Contains("Settled by your instructor:", page.QuerySelector("main")!.Text(), StringComparison.Ordinal);
        Assert.DoesNotContain("Everything that was asked is right", page.QuerySelector("main")!.Text(), StringComparison.Ordinal);
    }

    /// <summary>Whoever loses most by typing right numbers is told so first, and does not get them worked out on the back.</summary>
    [Fact]
    public void What_cost_most_stands_first_and_right_numbers_are_not_worked_out_beside_wrong_ones()
    {
        var grade = Student("s02");
        var wrong = grade.Answers[0] with
        {
            Outcome = Outcome.Incorrect,
            Points = grade.Answers[0].OutOf - 1,
            Value = CellFormulas.Values.CellValue.FromNumber(-1),
            Findings = [new AnswerFinding.NotRight()],
        };
        List<AnswerGrade> typed =
        [
            .. grade
                .Answers.Skip(1)
                .Where(answer => answer.Part.FormulaAsked)
                .Select(answer =>
                    answer with
                    {
                        Outcome = Outcome.ValueOnly,
                        Points = answer.OutOf / 2,
                        Findings = [],
                        OwnEarlierAnswers = new Dictionary<string, double>(),
                    }
                ),
        ];
        Assert.True(typed.Count > 1);

        var page = Page(grade with { Answers = [wrong, .. typed] });

        Assert.Equal("What cost most", page.QuerySelector(".front h2")!.Text());
        Assert.Contains(
            $"{typed.Count} right numbers without a formula cost",
            page.QuerySelector(".costliest")!.Text(),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("without a formula cost", page.QuerySelector(".next-steps")!.Text(), StringComparison.Ordinal);
        Assert.Contains(wrong.Part.Ask, Assert.Single(page.QuerySelectorAll(".missed-part")).Text(), StringComparison.Ordinal);

        var onlyTyped = Page(grade with { Answers = [.. typed] });
        Assert.Equal(typed.Count, onlyTyped.QuerySelectorAll(".missed-part").Length);
        Assert.Contains("How your numbers are worked out", onlyTyped.QuerySelector(".missed h2")!.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_foot_of_the_page_names_no_file() =>
        Assert.All(SampleClass.Grades.Students, grade =>
            Assert.DoesNotMatch(@"\.(xlsx|xlsm|ods|zip)\b", Page(grade).QuerySelector("footer")!.Text())
        );

    [Fact]
    public void A_file_that_could_not_be_read_is_told_first_also_where_points_were_given_by_hand() =>
        Assert.Contains(
            "could not be read",
            Page(Student("s01") with { Status = GradeStatus.Unreadable }).QuerySelector("header")!.Text(),
            StringComparison.Ordinal
        );

    /// <summary>A sentence that would stand beside any answer helps with none: what was asked is named.</summary>
    [Fact]
    public void A_wrong_number_that_nothing_explains_is_told_with_what_was_asked()
    {
        var grade = Student("s01");
        var wrong = grade.Answers[0] with
        {
            Outcome = Outcome.Incorrect,
            Points = 0,
            Value = CellFormulas.Values.CellValue.FromNumber(-1),
            Findings = [new AnswerFinding.NotRight()],
        };
        var page = Page(grade with { Answers = [wrong, .. grade.Answers.Skip(1)] });
        Assert.Contains(page.QuerySelectorAll(".put-right li > p:not(.ask)").Select(told => told.Text()), told =>
            told.Contains("part a", StringComparison.Ordinal) && told.Contains("worked solution", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Who_handed_in_nothing_is_told_so_kindly() =>
        Assert.Contains("nothing to say yet", Page(Student("s08")).QuerySelector("header")!.Text(), StringComparison.Ordinal);

    [Fact]
    public void Who_handed_in_a_broken_file_is_told_what_to_do()
    {
        var page = Page(Student("s09"));
        Assert.Contains("save it as an Excel workbook", page.QuerySelector("header")!.Text(), StringComparison.Ordinal);
        Assert.Contains("The file is cut off", page.QuerySelector("main")!.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_page_says_that_it_is_advice() =>
        Assert.All(SampleClass.Grades.Students, grade =>
            Assert.Contains(
                "advice to your instructor, who decides on your grade",
                Page(grade).QuerySelector("footer")!.Text(),
                StringComparison.Ordinal
            )
        );
}
