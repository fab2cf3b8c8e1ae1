using ClassKit.Exercises.Choosing;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Rehearsing;

/// <summary>An invented class whose answers are made to be something, so that the grader can be wrong about them.</summary>
public sealed class RehearsalTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void The_grader_judges_every_answer_as_it_was_made(ulong seed)
    {
        var rehearsal = RehearseLesson
            .Run(new(PracticeSet.Of(SmallClass.Lesson), 40, new(SetWish.None, IsSpread: false, seed)), Run.Unwatched)
            .Model!;

        var answers = rehearsal.Graded.Grades.Students.SelectMany(student => student.Answers).ToList();
        Assert.Equal(40 * (27 + 4), answers.Count);
        Assert.Equal((answers.Count, answers.Count), (rehearsal.Report.Answers, rehearsal.Report.GradedRight));
        Assert.Equal(new Note.Rehearsed(rehearsal.Returned.Count, rehearsal.Report), Assert.Single(RehearsalFiles.Notes(rehearsal)));
        Assert.Contains(
            "No right answer was taken for one.",
            System.Text.Encoding.UTF8.GetString(RehearsalFiles.Of(rehearsal)[0].Content),
            StringComparison.Ordinal
        );

        // A right choice shows the method as a right formula does, and words show nothing before somebody has read them.
        Assert.Contains(rehearsal.Report.Parts, part => part.Part.Choice is not null);
        Assert.Contains(rehearsal.Report.Parts, part => part.Part.InWords is not null);
        Assert.All(rehearsal.Report.Parts, part =>
            Assert.Equal(part.Part.InWords is not null, part.StrongShare is null && part.WeakShare is null)
        );
        Assert.All(rehearsal.Report.Parts.Where(part => part.Part.Choice is not null), part =>
            Assert.InRange(part.StrongShare!.Value, 0.3, 1)
        );

        // A rehearsal in which nothing goes wrong would prove nothing.
        Assert.Empty(Enum.GetValues<Outcome>().Except([Outcome.Unsupported, .. answers.Select(answer => answer.Outcome)]));
    }
}
