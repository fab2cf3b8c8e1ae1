using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Sensory;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Sensory;

/// <summary>A bread that rests for a day before it is cut is on no plate of the class that bakes it.</summary>
public sealed class CutAnotherDayTests
{
    [Fact]
    public void It_is_neither_among_the_samples_nor_in_the_triangle()
    {
        var pack = ComputedPack
            .Build(SampleLesson.Of(SampleLesson.Popovers, SampleLesson.Muffins with { CutAfterMinutes = 24 * 60 }), SampleLesson.Class)
            .Value;

        Assert.Equal(["popovers"], pack.Tasting.Breads.Select(bread => bread.Bread.Formula.Id));
        Assert.Equal("popovers", TrianglePair.Of(pack.Servable, SampleLesson.Class.Teams)!.A.Bread.Formula.Id);
        Assert.Equal(["muffins"], pack.CutAnotherDay.Select(bread => bread.Formula.Id));
    }

    /// <summary>Then the sheet is for that other day.</summary>
    [Fact]
    public void Where_all_are_cut_another_day_all_are_on_the_sheet()
    {
        var pack = ComputedPack
            .Build(
                SampleLesson.Of(SampleLesson.Popovers with { CutAfterMinutes = 720 }, SampleLesson.Muffins with { CutAfterMinutes = 1440 }),
                SampleLesson.Class
            )
            .Value;

        Assert.Equal(2, pack.Tasting.Breads.Count);
    }
}
