using ClassKit.Exercises.Randomness;

namespace ClassKit.Exercises.Tests.Randomness;

public sealed class SeededDrawsTests
{
    [Fact]
    public void The_numbers_are_those_of_SplitMix64()
    {
        // First outputs for seed 1234567 as printed with the public-domain reference implementation (Vigna, splitmix64.c)
        // in several languages' test suites; from memory.
        var stream = new SeededDraws(1234567);

        Assert.Equal(
            [6457827717110365317UL, 3203168211198807973UL, 9817491932198370423UL, 4593380528125082431UL, 16408922859458223821UL],
            [stream.Next(), stream.Next(), stream.Next(), stream.Next(), stream.Next()]
        );
    }

    [Fact]
    public void Every_number_below_a_bound_comes_up_about_equally_often()
    {
        var stream = new SeededDraws(42);
        var counts = new int[6];
        for (var draw = 0; draw < 60_000; draw++)
            counts[stream.Below(6)]++;

        // Chi-squared with 5 degrees of freedom stays below 20.5 in 99.9 % of fair runs (NIST/SEMATECH e-Handbook, table 1.3.6.7.4).
        Assert.InRange(counts.Sum(count => Math.Pow(count - 10_000, 2) / 10_000), 0, 20.5);
    }

    [Fact]
    public void Streams_of_different_purposes_have_nothing_in_common()
    {
        var first = SeededDraws.For(1, "variant", "hydration", "ada");
        var second = SeededDraws.For(1, "variant", "hydration", "ben");
        var again = SeededDraws.For(1, "variant", "hydration", "ada");
        // The words matter one by one: "ab", "c" is another purpose than "a", "bc".
        Assert.NotEqual(SeededDraws.For(1, "ab", "c").Next(), SeededDraws.For(1, "a", "bc").Next());
        for (var draw = 0; draw < 100; draw++)
        {
            var number = first.Next();
            Assert.NotEqual(number, second.Next());
            Assert.Equal(number, again.Next());
        }
    }
}
