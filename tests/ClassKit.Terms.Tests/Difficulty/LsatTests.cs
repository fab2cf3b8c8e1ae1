using ClassKit.Terms.Difficulty;

namespace ClassKit.Terms.Tests.Difficulty;

/// <summary>
/// Section 6 of the Law School Admission Test, five questions answered by 1,000 people: R. D. Bock and M. Lieberman, Psychometrika 35
/// (1970), 179. The counts equal those of psych's lsat6.
/// </summary>
public sealed class LsatTests
{
    /// <summary>How many answered just so, questions 1 to 5 from left to right.</summary>
    private static readonly (string Answers, int People)[] Counts =
    [
        ("00000", 3),
        ("00001", 6),
        ("00010", 2),
        ("00011", 11),
        ("00100", 1),
        ("00101", 1),
        ("00110", 3),
        ("00111", 4),
        ("01000", 1),
        ("01001", 8),
        ("01011", 16),
        ("01101", 3),
        ("01110", 2),
        ("01111", 15),
        ("10000", 10),
        ("10001", 29),
        ("10010", 14),
        ("10011", 81),
        ("10100", 3),
        ("10101", 28),
        ("10110", 15),
        ("10111", 80),
        ("11000", 16),
        ("11001", 56),
        ("11010", 21),
        ("11011", 173),
        ("11100", 11),
        ("11101", 61),
        ("11110", 28),
        ("11111", 298),
    ];

    private static readonly PastDifficulty Past = PastDifficulty.Of([
        .. Counts.SelectMany(count => Enumerable.Repeat(Classes.Work(count.Answers.Select(answer => (int?)(answer - '0'))), count.People)),
    ]);

    /// <summary>
    /// RM of eRm 1.0-2 (P. Mair and R. Hatzinger, Journal of Statistical Software 20(9), 2007), Debian's r-cran-erm, on psych's lsat6:
    /// minus betapar, and se.beta.
    /// </summary>
    [Fact]
    public void Difficulties_and_their_errors_are_those_of_eRm()
    {
        double[] difficulties = [-1.2561280, 0.4749071, 1.2359806, 0.1684101, -0.6231699],
            errors = [0.1044057, 0.0699171, 0.0687777, 0.0726194, 0.0859174];
        var parts = Enumerable.Range(0, 5).Select(at => Past.Of(Classes.Part(at))!).ToList();
        Assert.Equal(difficulties, parts.Select(part => part.Difficulty!.Value), (theirs, ours) => Math.Abs(theirs - ours) < 1e-3);
        Assert.Equal(errors, parts.Select(part => part.Error!.Value), (theirs, ours) => Math.Abs(theirs - ours) < 1e-3);
        Assert.All(parts, part => Assert.True(part.IsEnough));
    }

    /// <summary>
    /// Marginal maximum likelihood with one common slope: difficulties −3.6153, −1.3224, −0.3176, −1.7301, −2.7802 at slope 0.7551 (D.
    /// Rizopoulos, Journal of Statistical Software 17(5), 2006, from memory), which is a deviation of 0.7551 in logits (as D. Thissen,
    /// Psychometrika 47, 1982, 175) around a mean of 1.4748. Another likelihood than ours: the fifth difficulty differs by 0.0014.
    /// </summary>
    [Fact]
    public void Abilities_spread_as_marginal_likelihood_has_them()
    {
        double[] marginal = [-3.6153, -1.3224, -0.3176, -1.7301, -2.7802];
        const double slope = 0.7551;
        var mean = marginal.Average() * slope;
        Assert.Equal(
            marginal.Select(difficulty => (difficulty * slope) - mean),
            Enumerable.Range(0, 5).Select(at => Past.Of(Classes.Part(at))!.Difficulty!.Value),
            (theirs, ours) => Math.Abs(theirs - ours) < 2e-3
        );
        var everybody = Past.Everybody(0);
        Assert.Equal(slope, everybody.Deviation, 1e-3);
        Assert.Equal(-mean, everybody.Mean, 1e-3);
    }

    /// <summary>The class itself is no more than it did: 3.819 of 5 on average, and the band around it is narrow.</summary>
    [Fact]
    public void What_is_expected_of_the_same_people_is_what_they_earned()
    {
        var band = Past.Expect([.. Enumerable.Range(0, 5).Select(at => (Classes.Part(at), 1.0))], "a class", 1000)!;
        Assert.Equal((924 + 709 + 553 + 763 + 870) / 1000.0, band.Middle, 2e-3);
        Assert.True(band.OfTheClass);
        Assert.InRange(band.High - band.Low, 0.05, 0.2);
    }
}
