using ClassKit.Grading.Answers;
using ClassKit.Grading.Corrections;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.PracticeBank.Tests.Fillings;

/// <summary>
/// Every part that is answered in own words, of every exercise that ships: whatever a student writes there is kept as text for the
/// instructor, and nothing is made of it.
/// </summary>
public sealed class WrittenFillingTests
{
    public static TheoryData<string, string> Words =>
        new()
        {
            { "The water was too warm.\nTake what the rule asks for.", "The water was too warm.\nTake what the rule asks for." },
            { "=SUM(A1:A9)+1", "=SUM(A1:A9)+1" },
            { "=1/0", "=1/0" },
            { "- less yeast", "- less yeast" },
            { "42", "42" },
            { "B", "B" },
            { "<b>bold</b> & <script>alert(1)</script>", "<b>bold</b> & <script>alert(1)</script>" },
            { "  \u0007bell\r\nand tab\t ", "bell\nand tab" },
        };

    private static IEnumerable<AnswerGrade> Graded(object? filling) =>
        Shipped
            .Seats.SelectMany(seat => seat.Grade((_, part) => part.InWords is null ? null : filling))
            .Where(grade => grade.Part.InWords is not null);

    [Fact]
    public void Several_exercises_ask_for_words_and_say_what_to_look_for()
    {
        var parts = Shipped.Exercises.SelectMany(exercise => exercise.Parts).Where(part => part.InWords is not null).ToList();

        Assert.InRange(parts.Count, 3, int.MaxValue);
        Assert.All(parts, part => Assert.Contains("point", part.InWords!.LookFor, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void Words_are_kept_as_text_and_wait_for_the_instructor(string written, string kept) => Assert.All(Graded(written), grade =>
        {
            Assert.Equal((Outcome.Unsupported, 0m, 0m, true), (grade.Outcome, grade.Points, grade.OutOf, grade.IsUndecided));
            Assert.Equal([new AnswerFinding.Wrote(kept.Length)], grade.Findings);
            Assert.Equal((kept, null), (grade.Value.Text, grade.Formula));
        });

    [Theory]
    [InlineData(null)]
    [InlineData(" \n ")]
    public void Nothing_written_is_nothing(string? written) =>
        Assert.All(Graded(written), grade =>
            Assert.Equal((Outcome.Blank, 0m, grade.Part.Points), (grade.Outcome, grade.Points, grade.OutOf))
        );

    /// <summary>A character beyond the first plane takes two places; half of one is no text.</summary>
    [Fact]
    public void What_nobody_would_read_is_cut_and_its_length_told()
    {
        var text = new string('x', TypedWords.Most - 1) + "\U0001F35E" + new string('y', 5_000);

        Assert.All(Graded(text), grade =>
        {
            Assert.Equal(TypedWords.Most - 1, grade.Value.Text.Length);
            Assert.Equal([new AnswerFinding.Wrote(text.Length)], grade.Findings);
        });
    }

    [Fact]
    public void Points_that_the_instructor_gives_count()
    {
        var seat = Shipped.Seats[0];
        var answers = seat.Grade((_, part) => part.InWords is null ? null : "words");
        var grades = new ClassGrades(seat.Dealt, [new(seat.Student.Who, GradeStatus.Graded, "s.xlsx", answers, [])], []);
        var written = answers.First(answer => answer.Part.InWords is not null);

        var after = Corrector.Apply(grades, [new(seat.Student.Who.Id, written.Exercise.Id, written.Part.Id, 1.5m, "")]).Students[0];

        Assert.Equal(grades.Students[0].Points + 1.5m, after.Points);
        Assert.Equal(grades.Students[0].OutOf + written.Part.Points, after.OutOf);
        Assert.False(after.Answers.Single(answer => answer.Part == written.Part && answer.Exercise == written.Exercise).IsUndecided);
    }
}
