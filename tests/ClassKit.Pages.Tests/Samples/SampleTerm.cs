using ClassKit.Terms.Agreement;
using ClassKit.Terms.Bench;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Tests.Samples;
using ClassKit.Terms.Work;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>A random term in which something is missed and something is still to come, and two markers who differ.</summary>
internal static class SampleTerm
{
    public static SchoolTerm Term { get; } =
        Enumerable
            .Range(1, 1000)
            .Select(seed => RandomTerms.Of((ulong)seed))
            .First(term =>
                TermGrader.Grade(term) is var grades
                && grades.Any(grade => grade.Place < grade.ByAverage)
                && grades.Any(grade => grade.IsProvisional)
                && grades.Any(grade => !grade.IsProvisional)
            );

    public static IReadOnlyList<TermGrade> Grades { get; } = TermGrader.Grade(Term);

    private static BenchScale Scale { get; } =
        new([("Safety", 2), ("Mixing", 1)], [0, 1, 2, 3], ["Not yet", "Developing", "Secure", "Excellent"]);

    /// <summary>Two criteria for a class of two teams.</summary>
    public static BenchForm Form { get; } =
        new(
            "Bench work",
            new([("Weighing", 2), ("Mixing", 1)], [0, 1, 2], ["Not yet", "Secure", "Excellent"]),
            [
                ["By eye", "To the gram", "Checked"],
                ["Lumps", "Smooth", "Smooth & told why"],
            ],
            "Invented class",
            [.. SampleClass.Grades.Students.Select(student => student.Who)],
            2
        );

    /// <summary>Six students, of whom the second marker sees two otherwise; then a work that each marker saw alone.</summary>
    public static IReadOnlyList<MarkerAgreement> Agreement { get; } =
    [
        MarkerAgreement.Of(
            "Day one",
            new(
                Scale,
                Sheet("first", [2, 2], [3, 1], [1, 1], [0, 2], [2, 1], [3, 3]),
                Sheet("second", [2, 2], [3, 1], [3, 0], [0, 2], [2, 2], [3, 3])
            )
        ),
        MarkerAgreement.Of(
            "Day two",
            new(Scale, Sheet("first", [2, 2]), new("second", new Dictionary<string, IReadOnlyList<int>> { ["s2"] = [1, 1] }))
        ),
    ];

    private static BenchSheet Sheet(string marker, params IReadOnlyList<int>[] places) =>
        new(marker, places.Index().ToDictionary(entry => $"s{entry.Index + 1}", entry => entry.Item));
}
