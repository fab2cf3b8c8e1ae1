using ClassKit.Exercises.Randomness;
using ClassKit.Terms.Difficulty;

namespace ClassKit.Terms.Tests.Difficulty;

/// <summary>Made classes, of which the truth is known.</summary>
public sealed class SimulatedClassesTests
{
    private const int Parts = 12;

    [Fact]
    public void Difficulties_lie_within_their_stated_errors_in_95_of_100_cases()
    {
        var (within, all) = (0, 0);
        for (var seed = 1UL; seed <= 100; seed++)
        {
            var draws = SeededDraws.For(seed, "covered");
            var truth = Truth(draws);
            var past = PastDifficulty.Of(Class(draws, truth, 48, 0.5, "a class"));
            var parts = Enumerable
                .Range(0, Parts)
                .Select(at => (Truth: truth[at], Found: past.Of(Classes.Part(at))))
                .Where(part => part.Found?.Scale == 0)
                .ToList();
            var mean = parts.Average(part => part.Truth);
            all += parts.Count;
            within += parts.Count(part => Math.Abs(part.Found!.Difficulty!.Value - (part.Truth - mean)) <= 1.96 * part.Found.Error!.Value);
        }
        Assert.True(all > 100 * (Parts - 1), $"{all} of {100 * Parts} were on a scale.");
        // Of 1,200 cases, which hang together by classes, 95 % give or take 2.
        Assert.InRange((double)within / all, 0.93, 0.97);
    }

    [Fact]
    public void Of_ten_bands_about_eight_hold_what_the_class_earns()
    {
        const int rounds = 200;
        var held = 0;
        for (var seed = 1UL; seed <= rounds; seed++)
        {
            var draws = SeededDraws.For(seed, "expected");
            var truth = Truth(draws);
            List<double> more = [.. truth, .. Enumerable.Range(0, 4).Select(_ => Classes.Normal(draws))];
            var abilities = Enumerable.Range(0, 20).Select(_ => 0.8 + Classes.Normal(draws)).ToList();
            // Others answered everything, the class the first parts; then it is asked the last ones.
            List<PastWork> works =
            [
                .. Enumerable.Range(0, 60).Select(_ => Classes.Work(Classes.Row(draws, Classes.Normal(draws), more, _ => true), "others")),
                .. abilities.Select(ability => Classes.Work(Classes.Row(draws, ability, more, at => at < Parts))),
            ];
            var band = PastDifficulty
                .Of(works)
                .Expect([.. Enumerable.Range(Parts, 4).Select(at => (Classes.Part(at), 1.0))], "a class", abilities.Count)!;
            Assert.True(band.OfTheClass);
            var earned = abilities.Average(ability => Classes.Row(draws, ability, more, at => at >= Parts).Sum(cell => cell ?? 0));
            if (earned >= band.Low && earned <= band.High)
                held++;
        }
        // The class knows its own students here, of whom the band takes new ones of their kind: it may hold a little more often.
        Assert.InRange((double)held / rounds, 0.75, 0.93);
    }

    [Fact]
    public void What_everybody_got_or_nobody_has_no_difficulty_and_says_why()
    {
        var past = PastDifficulty.Of([Classes.Work([1, 0, 1, 0]), Classes.Work([1, 0, 0, 1]), Classes.Work([1, 0, 1, 0])]);
        Assert.Equal(
            (DifficultyGap.AllGot, DifficultyGap.NobodyGot),
            (past.Of(Classes.Part(0))!.Gap!.Value, past.Of(Classes.Part(1))!.Gap!.Value)
        );
        Assert.Null(past.Of(Classes.Part(2))!.Gap);
        Assert.Null(PastDifficulty.Of([Classes.Work([1, 1])]).Expect([(new("other", "x"), 2)], "a class", 20));
    }

    [Fact]
    public void Parts_that_nobody_was_asked_are_told_and_not_guessed()
    {
        var past = PastDifficulty.Of([Classes.Work([1, 0]), Classes.Work([0, 1])]);
        var band = past.Expect([(Classes.Part(0), 2), (Classes.Part(9), 3)], "another class", 10)!;
        Assert.Equal((2.0, 3.0, false), (band.OutOf, band.Unknown, band.OfTheClass));
    }

    [Fact]
    public void Sets_that_share_no_part_are_on_scales_of_their_own()
    {
        var past = PastDifficulty.Of([
            Classes.Work([1, 0, null, null]),
            Classes.Work([0, 1, null, null]),
            Classes.Work([null, null, 1, 0]),
            Classes.Work([null, null, 0, 1]),
        ]);
        Assert.Equal(past.Of(Classes.Part(0))!.Scale, past.Of(Classes.Part(1))!.Scale);
        Assert.NotEqual(past.Of(Classes.Part(0))!.Scale, past.Of(Classes.Part(2))!.Scale);
    }

    [Fact]
    public void It_says_about_how_many_answers_are_still_wanted()
    {
        var draws = SeededDraws.For(4, "wanted");
        var truth = Truth(draws);
        var few = PastDifficulty.Of(Class(draws, truth, 16, 0, "a class"));
        var part = Enumerable
            .Range(0, Parts)
            .Select(at => few.Of(Classes.Part(at)))
            .OfType<PartDifficulty>()
            .Where(part => part.StillWanted > 0)
            .MaxBy(part => part.StillWanted)!;
        Assert.False(part.IsEnough);
        var more = PastDifficulty
            .Of(Class(draws, truth, 16 * (int)Math.Ceiling((part.Answers + part.StillWanted!.Value) * 1.5 / part.Answers), 0, "a class"))
            .Of(part.Part)!;
        Assert.True(more.IsEnough, $"{part} and then {more}");
    }

    private static List<double> Truth(SeededDraws draws) => [.. Enumerable.Range(0, Parts).Select(_ => Classes.Normal(draws))];

    /// <summary>A class with sets that overlap: everybody is asked two of three parts.</summary>
    private static List<PastWork> Class(SeededDraws draws, IReadOnlyList<double> truth, int students, double mean, string named) =>
        [
            .. Enumerable
                .Range(0, students)
                .Select(student =>
                    Classes.Work(Classes.Row(draws, mean + Classes.Normal(draws), truth, at => (at + student) % 3 != 0), named)
                ),
        ];
}
