using ClassKit.Pages.Practice;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Practice;

/// <summary>A set that begins at exercise 4 looks like one with a page missing: it says whose numbers those are.</summary>
public sealed class SetTextTests
{
    [Fact]
    public void Numbers_that_do_not_run_from_one_are_said_to_be_those_of_the_class() =>
        Assert.StartsWith(
            "2 exercises (4 and 7 of the class’s list), ",
            SetText.Of([new(4, SampleExercises.Hydration), new(7, SampleExercises.Scaling)]),
            StringComparison.Ordinal
        );

    [Fact]
    public void Of_numbers_from_one_on_nothing_is_said() =>
        Assert.StartsWith(
            "2 exercises, ",
            SetText.Of([new(1, SampleExercises.Hydration), new(2, SampleExercises.Scaling)]),
            StringComparison.Ordinal
        );
}
