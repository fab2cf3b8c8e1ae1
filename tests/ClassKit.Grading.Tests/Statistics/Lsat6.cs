using ClassKit.Grading.Statistics;

namespace ClassKit.Grading.Tests.Statistics;

/// <summary>Law School Admission Test, section 6: five items, 1000 persons (Bock and Lieberman, Psychometrika 35, 1970, 179).</summary>
internal static class Lsat6
{
    /// <summary>How many persons had each pattern of right answers, from 00000 to 11111 in binary order, the first item first.</summary>
    private static readonly int[] Patterns =
    [
        3,
        6,
        2,
        11,
        1,
        1,
        3,
        4,
        1,
        8,
        0,
        16,
        0,
        3,
        2,
        15,
        10,
        29,
        14,
        81,
        3,
        28,
        15,
        80,
        16,
        56,
        21,
        173,
        11,
        61,
        28,
        298,
    ];

    public static ScoreTable Table { get; } =
        new(
            [1, 1, 1, 1, 1],
            [
                .. Patterns.SelectMany(
                    (persons, pattern) =>
                        Enumerable.Repeat<IReadOnlyList<decimal>>(
                            [.. Enumerable.Range(0, 5).Select(item => (decimal)((pattern >> (4 - item)) & 1))],
                            persons
                        )
                ),
            ]
        );
}
