using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests.Summaries;

public sealed class SharedFactorTests
{
    // Worked example of DoughTemperatureExercise: 138 °F, 87 °F, 10 × (95 − 87)/(95 + 112) = 0.386 lb, 0.386/10 × 65 % = 2.51 %.
    [Fact]
    public void Numbers_that_are_all_the_same_multiple_of_what_is_right_are_seen_together()
    {
        var shared = SharedFactor.Of(
            InGrams(Filled(138 * 1.37, 87 * 1.37, Math.Round(80.0 / 207 * 1.37, 3, MidpointRounding.AwayFromZero), 0.9))
        );

        Assert.NotNull(shared);
        Assert.Equal(1.37, shared.Factor, 0.01);
        Assert.Equal(["sum", "temperature", "ice"], shared.Answers.Select(answer => answer.Part.Id));
    }

    [Theory]
    [InlineData(151.0, 77.0, 0.5, 0.03)]
    [InlineData(138.0, 87.0, 0.386, 0.025)]
    [InlineData(138 * 1.37, 87 * 1.37, 0.386, 0.9)]
    public void Numbers_that_share_nothing_or_only_two_of_them_are_not(double sum, double temperature, double ice, double share) =>
        Assert.Null(SharedFactor.Of(InGrams(Filled(sum, temperature, ice, share))));

    /// <summary>The zero of °C and °F is arbitrary (BIPM, SI brochure, 2.3.1): twice 20 °C is twice nothing.</summary>
    [Fact]
    public void A_multiple_of_degrees_means_nothing() =>
        Assert.Null(SharedFactor.Of(Filled(138 * 1.37, 87 * 1.37, Math.Round(80.0 / 207 * 1.37, 3, MidpointRounding.AwayFromZero), 0.9)));

    /// <summary>The same answers, as though masses had been asked where the example asks temperatures.</summary>
    private static StudentGrade InGrams(StudentGrade grade) =>
        grade with
        {
            Answers =
            [
                .. grade.Answers.Select(answer =>
                    answer.Part.Unit == "°F" ? answer with { Part = answer.Part with { Unit = "g" } } : answer
                ),
            ],
        };

    private static StudentGrade Filled(double sum, double temperature, double ice, double share) =>
        Grade(new ReturnedBook(Ada).Answer("sum", sum).Answer("temperature", temperature).Answer("ice", ice).Answer("ice_share", share));
}
