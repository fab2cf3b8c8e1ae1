using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>Ada was graded; then Ben's work alone comes. Expected by common practice, no source: no grade is lost in silence.</summary>
public sealed class DroppedStudentsTests
{
    private static readonly GradeResult First = Grade(null, ("ada-berg.xlsx", SmallClass.Filled(SmallClass.Ada)));

    private static GradeResult Grade(GradeResult? earlier, params (string Name, byte[] Content)[] files) =>
        GradeClass.Run(
            new(SmallClass.Dealt, ReturnedFiles.Of([.. files.Select(file => new Upload(file.Name, () => new MemoryStream(file.Content)))]))
            {
                Earlier = earlier?.Grades,
            },
            Run.Unwatched
        );

    private static Produced Write(GradeResult graded, bool mayDrop) =>
        new GradePaths("dealt", "returned") { Graded = "graded", MayDrop = mayDrop }.Write(graded);

    [Fact]
    public void A_batch_without_those_graded_before_writes_nothing_and_names_them()
    {
        var late = Write(Grade(First, ("ben-okoye.xlsx", SmallClass.Filled(SmallClass.Ben))), false);

        Assert.Empty(late.Files);
        var problem = Assert.Single(late.Problems);
        Assert.Contains(SmallClass.Ada.Who.Name, problem.Found, StringComparison.Ordinal);
        Assert.DoesNotContain(SmallClass.Ben.Who.Name, problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_written_if_they_may_be_without_a_grade() =>
        Assert.NotEmpty(Write(Grade(First, ("ben-okoye.xlsx", SmallClass.Filled(SmallClass.Ben))), true).Files);

    [Fact]
    public void Both_batches_together_are_written()
    {
        var both = Grade(
            First,
            ("ada-berg.xlsx", SmallClass.Filled(SmallClass.Ada)),
            ("ben-okoye.xlsx", SmallClass.Filled(SmallClass.Ben))
        );

        Assert.NotEmpty(Write(both, false).Files);
    }

    [Fact]
    public void A_first_grading_is_written() =>
        Assert.NotEmpty(Write(Grade(null, ("ben-okoye.xlsx", SmallClass.Filled(SmallClass.Ben))), false).Files);
}
