using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.Pages.Tests.Samples;
using ClassKit.Wording.Files;

namespace ClassKit.Pages.Tests.Report;

public sealed class ClassReportTests
{
    private static readonly AngleSharp.Dom.IDocument Page = Html.Parse(HtmlPages.ClassReport(SampleClass.Grades, SampleClass.Summary));

    [Fact]
    public void What_to_teach_again_first_is_the_first_thing_after_the_heading()
    {
        var first = Page.QuerySelector("main")!.FirstElementChild!;
        Assert.Equal("What to teach again first", first.QuerySelector("h2")!.Text());
        Assert.Contains(SampleClass.Summary.TeachAgain[0].Part.Ask, first.QuerySelector("li")!.Text(), StringComparison.Ordinal);
        Assert.Contains(
            SampleClass.Summary.TeachAgain[0].Misconceptions[0].Misconception.Words,
            first.QuerySelector("li")!.Text(),
            StringComparison.Ordinal
        );
    }

    /// <summary>Of whom a wrong turn is counted: those whose answer is wrong, not the class.</summary>
    [Fact]
    public void A_wrong_turn_is_counted_among_the_wrong_answers()
    {
        var (weakest, turn) = (SampleClass.Summary.TeachAgain[0], SampleClass.Summary.TeachAgain[0].Misconceptions[0]);
        var wrong = weakest.Counts[Outcome.Misconception] + weakest.Counts[Outcome.Incorrect] + weakest.Counts[Outcome.Unreadable];
        Assert.Contains(
            wrong == 1 ? "The one wrong answer" : $"Commonest wrong turn: {turn.Students} of the {wrong} wrong answers",
            Page.QuerySelector(".priorities .note")!.Text(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_chart_has_the_counts_of_the_summary()
    {
        var bars = Page.QuerySelector("#parts")!.Closest("section")!.QuerySelectorAll(".bars li");
        Assert.Equal(SampleClass.Summary.Parts.Count, bars.Length);
        foreach (var (bar, part) in bars.Zip(SampleClass.Summary.Parts))
        {
            var drawn = bar.QuerySelectorAll("g > rect:not(.patterned, .plate)")
                .Sum(segment =>
                    double.Parse(segment.GetAttribute("width")!.TrimEnd('%'), System.Globalization.CultureInfo.InvariantCulture)
                );
            Assert.Equal(100, drawn, 0.01);
            Assert.Contains(
                $"{part.Counts[Outcome.Sound] + (part.Part.FormulaAsked ? 0 : part.Counts[Outcome.ValueOnly])} right",
                bar.QuerySelector("desc")!.Text(),
                StringComparison.Ordinal
            );
        }
    }

    /// <summary>
    /// Once all that was left to the instructor is marked, nothing in the report waits any more, and the counts still come to every answer.
    /// </summary>
    [Theory]
    [InlineData(1, "Right")]
    [InlineData(0, "Not right")]
    public void What_the_instructor_has_marked_waits_for_nobody(int share, string shown)
    {
        AnswerGrade Marked(AnswerGrade answer) =>
            answer.IsUndecided
                ? answer with
                {
                    Points = share * answer.Part.Points,
                    OutOf = answer.Part.Points,
                    Correction = new(0, "All three named"),
                }
                : answer;
        var marked = SampleClass.Grades with
        {
            Students = [.. SampleClass.Grades.Students.Select(student => student with { Answers = [.. student.Answers.Select(Marked)] })],
        };
        var summary = ClassSummarizer.Summarize(marked);
        var (before, after) = (Page.Body!.Text(), Html.Parse(HtmlPages.ClassReport(marked, summary)).Body!.Text());

        Assert.Contains("For the instructor", before, StringComparison.Ordinal);
        Assert.DoesNotContain("For the instructor", after, StringComparison.Ordinal);
        Assert.Contains(summary.Parts, part => part.Marked > 0);
        Assert.All(summary.Parts, part => Assert.Equal(part.Asked, ClassKit.Wording.Outcomes.OutcomeText.ShownCounts(part).Values.Sum()));
        Assert.All(marked.Students.SelectMany(student => student.Answers).Where(answer => answer.Outcome == Outcome.Unsupported), answer =>
            Assert.Equal(shown, ClassKit.Wording.Outcomes.OutcomeText.Brief(ClassKit.Wording.Outcomes.OutcomeText.Shown(answer)))
        );
    }

    [Fact]
    public void Misconceptions_are_ranked_by_students_and_name_them()
    {
        var rows = Page.QuerySelector("#misconceptions")!.Closest("section")!.QuerySelectorAll("tbody tr");
        var counts = rows.Select(row => int.Parse(row.QuerySelector("td")!.Text(), System.Globalization.CultureInfo.InvariantCulture))
            .ToList();
        Assert.Equal(counts.OrderDescending(), counts);
        Assert.All(rows, row =>
            Assert.Equal(
                int.Parse(row.QuerySelector("td")!.Text(), System.Globalization.CultureInfo.InvariantCulture),
                row.QuerySelectorAll("td")[^1].Text().Split(", ").Length
            )
        );
    }

    [Fact]
    public void Every_file_that_does_not_count_and_every_student_without_a_grade_is_accounted_for()
    {
        var notGraded = SampleClass.Grades.Students.Where(student => student.Status != GradeStatus.Graded).ToList();
        var files = Page.QuerySelector("#files")!.Closest("section")!.QuerySelectorAll("tbody tr").Select(row => row.Text()).ToList();
        Assert.Equal(notGraded.Count + SampleClass.Grades.Unmatched.Count, files.Count);
        Assert.Contains(files, row =>
            row.StartsWith("Ilse van der Meer", StringComparison.Ordinal)
            && row.Contains("unreadable: why stands under “Facts to look at”", StringComparison.Ordinal)
        );
        Assert.Contains(files, row => row.StartsWith("Hiro Tanabe none", StringComparison.Ordinal));
        Assert.All(SampleClass.Grades.Unmatched, file =>
            Assert.Contains(files, row =>
                row.Contains(file.File, StringComparison.Ordinal) && row.Contains(UncountedWords.Of(file), StringComparison.Ordinal)
            )
        );
    }

    [Fact]
    public void What_programs_left_behind_is_named_below_the_table_and_stands_in_no_row()
    {
        var grades = SampleClass.Grades with
        {
            Files =
            [
                .. SampleClass.Grades.Files,
                new("~$lock.xlsx", null, null, FileFate.Leftover, null, new Uncounted.NotRead(new Refusal.Leftover(LeftoverKind.LockFile))),
            ],
        };
        var files = Html.Parse(HtmlPages.ClassReport(grades, ClassSummarizer.Summarize(grades)))
            .QuerySelector("#files")!
            .Closest("section")!;

        Assert.DoesNotContain(files.QuerySelectorAll("tbody tr"), row => row.Text().Contains("~$lock", StringComparison.Ordinal));
        Assert.Contains("ignored: ~$lock.xlsx", files.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_that_could_not_be_evaluated_are_put_before_the_instructor()
    {
        var left = Page.QuerySelector("#flags")!.Closest("section")!.Text();
        var unsupported = SampleClass
            .Grades.Students.SelectMany(student => student.Answers)
            .Where(answer => answer.Outcome == Outcome.Unsupported)
            .ToList();
        Assert.NotEmpty(unsupported);
        Assert.All(unsupported, answer => Assert.Contains(answer.Formula!, left, StringComparison.Ordinal));
    }

    /// <summary>Ten graded workbooks: one student is a tenth of the class.</summary>
    [Fact]
    public void A_small_class_is_called_small() =>
        Assert.Contains(
            "one student more or less moves a share by 10 percentage points",
            Page.QuerySelector("#parts")!.Closest("section")!.Text(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Every_part_has_its_statistics_and_a_small_class_is_told_how_little_they_say()
    {
        var section = Page.QuerySelector("#statistics")!.Closest("section")!;
        Assert.Equal(SampleClass.Summary.Parts.Count, section.QuerySelectorAll("tbody tr").Length);
        Assert.Contains("95 % interval", section.Text(), StringComparison.Ordinal);
        Assert.Contains("too small to say more", section.Text(), StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", section.Text(), StringComparison.Ordinal);
    }

    // The lines of Ebel and Frisbie (1991) with their examples: D = (18 - 9)/20 = 0.45 is very good, 0.20 marginal, 0.19 poor; 0.395 lies
    // in a gap of the printed bands.
    [Theory]
    [InlineData(0.45, "clearly")]
    [InlineData(0.395, "fairly well")]
    [InlineData(0.20, "weakly")]
    [InlineData(0.19, "hardly")]
    [InlineData(-0.1, "the wrong way round")]
    public void A_discrimination_index_is_put_in_words(double index, string words) =>
        Assert.Equal(words, Pages.Report.DiscriminationText.Of(index));

    [Fact]
    public void A_class_that_returned_nothing_has_a_report_all_the_same()
    {
        var nothing = SampleClass.Grades with
        {
            Students = [.. SampleClass.Dealt.Students.Select(student => new StudentGrade(student.Who, GradeStatus.Missing, null, [], []))],
            Files = [],
        };

        var page = Html.Parse(HtmlPages.ClassReport(nothing, ClassSummarizer.Summarize(nothing)));

        Assert.Contains("No workbook could be graded", page.QuerySelector("main")!.Text(), StringComparison.Ordinal);
        Assert.Equal(
            SampleClass.Dealt.Students.Count,
            page.QuerySelector("#files")!.Closest("section")!.QuerySelectorAll("tbody tr").Length
        );
    }

    [Fact]
    public void Every_skill_has_a_bar_and_a_row_with_the_labels_of_its_parts()
    {
        var page = Html.Parse(HtmlPages.ClassReport(SampleClass.Grades, SampleClass.Summary));

        var section = page.QuerySelector("#skills")!.Closest("section")!;
        var rows = section.QuerySelectorAll("tbody tr");
        Assert.Equal(
            SampleExercises.All.Select(exercise => exercise.Skill).Distinct(),
            rows.Select(row => row.QuerySelector("th")!.Text())
        );
        Assert.Equal(
            SampleExercises.All.Sum(exercise => exercise.Parts.Count),
            rows.Sum(row => row.QuerySelectorAll("td")[0].Text().Split(", ").Length)
        );
    }
}
