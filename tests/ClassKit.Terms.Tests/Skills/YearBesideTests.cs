using ClassKit.Terms.Skills;

namespace ClassKit.Terms.Tests.Skills;

/// <summary>Two years beside each other. The bands are those of <see cref="SkillBand"/>, which is held against R's qbeta.</summary>
public sealed class YearBesideTests
{
    private static readonly DateOnly Day = new(2026, 11, 29);

    [Fact]
    public void Exercises_of_both_years_stand_there_the_hardest_of_the_earlier_first_each_with_all_its_answers()
    {
        var years = YearBeside.Of(
            [Of("soda", 9, 20), Of("ice", 1, 10), Of("ice", 1, 10), Of("old", 0, 5)],
            [Of("ice", 18, 20), Of("soda", 11, 20), Of("new", 0, 5)]
        );

        Assert.Equal(["Ice", "Soda"], years.Select(year => year.Exercise));
        Assert.Equal(SkillBand.Of(2, 18), years[0].Then);
        Assert.Equal(SkillBand.Of(18, 2), years[0].Now);
        Assert.Equal([true, false], years.Select(year => year.IsOther));
    }

    [Fact]
    public void Years_that_have_no_exercise_in_common_have_nothing_to_show() =>
        Assert.Empty(YearBeside.Of([Of("old", 0, 5)], [Of("new", 0, 5)]));

    private static (string, string, ShownSkill) Of(string exercise, decimal shown, decimal asked) =>
        (exercise, char.ToUpperInvariant(exercise[0]) + exercise[1..], new("skill", Day, shown, asked));
}
