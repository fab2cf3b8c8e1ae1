using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Integrity;

namespace ClassKit.Grading.Tests.Integrity;

/// <summary>In a large class nobody is compared with everybody; what is found is what comparing everybody finds.</summary>
public class LargeClassFactsTests
{
    private static readonly IReadOnlyList<(string Exercise, string Part)> Parts =
    [
        .. Enumerable.Range(0, 5).Select(part => ("sums", $"part_{part}")),
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Every_pair_rare_enough_is_looked_at(int seed)
    {
        var random = new Random(seed);
        var written = Enumerable
            .Range(0, 60)
            .Select(_ =>
                Parts.Where(_ => random.Next(3) > 0).ToDictionary(part => part, _ => $"text {random.Next(1, 12) * random.Next(1, 12)}")
            )
            .ToList();
        var counts = new WrittenCounts(written);
        const double line = 1e-2;

        var found = new RarePairs(written, text => counts.Alike(text.Part, text.Text), line).All().ToList();

        List<(int One, int Other)> rare =
        [
            .. from one in Enumerable.Range(0, written.Count)
            from other in Enumerable.Range(one + 1, written.Count - one - 1)
            let alike = written[one].Where(own => written[other].GetValueOrDefault(own.Key) == own.Value).ToList()
            where alike.Count > 0 && alike.Aggregate(1.0, (product, own) => product * counts.Alike(own.Key, own.Value)) <= line
            select (one, other),
        ];
        Assert.NotEmpty(rare);
        Assert.Empty(rare.Except(found));
        Assert.Equal(found.Distinct().Order(), found);
        Assert.InRange(found.Count, rare.Count, written.Count * (written.Count - 1) / 2 - 1);
    }

    [Theory]
    [InlineData(0.5, "absolute")]
    [InlineData(0.02, "relative")]
    [InlineData(5, "rounding")]
    public void A_number_fits_those_whom_asking_everybody_finds(double amount, string kind)
    {
        var random = new Random(7);
        var tolerance = kind switch
        {
            "absolute" => Tolerance.Absolute(amount),
            "relative" => Tolerance.Relative(amount),
            _ => Tolerance.Rounding(amount),
        };
        var part = new Part("dough", "How much?", CellFormula.Of("=flour"), "g", tolerance, 1, true, []);
        var exercise = new Exercise(
            "sums",
            "Sums",
            "adding",
            ExerciseLevel.Standard,
            5,
            "arithmetic",
            "Add.",
            [new("flour", "Flour", "g", -100, 100, 1)],
            [],
            [part],
            []
        );
        List<double> expected = [.. Enumerable.Range(0, 400).Select(_ => Math.Round((random.NextDouble() - 0.5) * 100, 1))];
        List<DealtStudent> seats =
        [
            .. expected.Select(
                (number, at) =>
                    new DealtStudent(
                        new($"s{at}", $"S {at}"),
                        $"workbooks/s{at}.xlsx",
                        [
                            new Variant(
                                exercise,
                                new Dictionary<string, decimal> { ["flour"] = (decimal)number },
                                new Dictionary<string, double> { ["dough"] = number }
                            ),
                        ]
                    )
            ),
        ];
        var numbers = new ExpectedNumbers(seats, "sums", part);

        for (var number = -55.0; number < 55; number += 0.25)
            Assert.Equal(
                expected.Index().Where(one => tolerance.Accepts(one.Item, number)).Select(one => one.Index),
                numbers.Accepting(number)
            );
    }
}
