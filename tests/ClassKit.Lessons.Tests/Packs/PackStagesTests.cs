using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Values;

namespace ClassKit.Lessons.Tests.Packs;

/// <summary>Computed, planned, in words: each stage is made of the one before it, and pages take the last only.</summary>
public sealed class PackStagesTests
{
    private static readonly PlannedPack Planned = new(
        ComputedPack.Build(SampleLesson.Lesson, SampleLesson.Class).Value,
        new(null, null, null, [], null)
    );

    private static readonly Dictionary<string, string> Values = ValueNames
        .Of(SampleLesson.Lesson.Formulas)
        .ToDictionary(name => name, name => $"<{name}>");

    [Fact]
    public void A_text_reads_with_the_values_of_the_pack()
    {
        Assert.Equal("All <teams> teams, <buns.pieces>.", new LessonPack(Planned, Values).Words("All {teams} teams, {buns.pieces}."));
        Assert.Equal("{something_else}", new LessonPack(Planned, Values).Words("{something_else}"));
    }

    /// <summary>A value that a text may name and that nobody has put into words is our fault, and shows before any text needs it.</summary>
    [Fact]
    public void There_is_no_pack_in_words_while_a_value_has_none() =>
        Assert.All(Values.Keys, name =>
            Assert.Contains(
                name,
                Assert
                    .Throws<ArgumentException>(() => new LessonPack(Planned, Values.Where(value => value.Key != name).ToDictionary()))
                    .Message,
                StringComparison.Ordinal
            )
        );

    [Fact]
    public void What_was_computed_is_the_same_at_every_stage()
    {
        var pack = new LessonPack(Planned, Values);
        Assert.Same(Planned.Cards, pack.Cards);
        Assert.Same(Planned.Comparison, pack.Comparison);
        Assert.Same(Planned.Bench, pack.Bench);
        Assert.Same(Planned.AsWritten, pack.AsWritten);
    }
}
