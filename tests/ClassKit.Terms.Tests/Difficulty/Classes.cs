using ClassKit.Exercises.Randomness;
using ClassKit.Terms.Difficulty;

namespace ClassKit.Terms.Tests.Difficulty;

/// <summary>Works of people whose ability is known, because they were made.</summary>
internal static class Classes
{
    /// <summary>A part of the name of its place.</summary>
    public static AskedPart Part(int place) => new("made", $"p{place}");

    /// <summary>A work: of each place 1, 0, or nothing where it was not asked.</summary>
    public static PastWork Work(IEnumerable<int?> row, string named = "a class", string deal = "a deal") =>
        new(
            named,
            deal,
            [
                .. row.Index()
                    .Where(cell => cell.Item is not null)
                    .Select(cell => new PastAnswer(Part(cell.Index), cell.Item!.Value, 1, null)),
            ]
        );

    /// <summary>Answers of one person under the model.</summary>
    public static IEnumerable<int?> Row(SeededDraws draws, double ability, IReadOnlyList<double> difficulties, Func<int, bool> isAsked) =>
        [
            .. difficulties.Select(
                (difficulty, at) =>
                    isAsked(at)
                        ? Uniform(draws) < 1 / (1 + Math.Exp(difficulty - ability))
                            ? 1
                            : 0
                        : (int?)null
            ),
        ];

    /// <summary>From the standard normal distribution (Box and Muller, Annals of Mathematical Statistics 29, 1958, 610).</summary>
    public static double Normal(SeededDraws draws) => Math.Sqrt(-2 * Math.Log(Uniform(draws))) * Math.Cos(2 * Math.PI * Uniform(draws));

    private static double Uniform(SeededDraws draws) => (draws.Below(1_000_000) + 0.5) / 1_000_000;
}
