using ClassKit.Terms.Agreement;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Terms;

/// <summary>How far two markers agree, in words that claim no more than so many students can show.</summary>
public static class AgreementWords
{
    /// <summary>A level on average, above which a marker is said to lean.</summary>
    private const double Lean = 0.15;

    /// <summary>A coefficient, to two decimals.</summary>
    public static string Figure(double value) => NumberText.Fixed(value, 2);

    /// <summary>An interval from its low end to its high one.</summary>
    public static string Of(Interval? interval) => interval is { } known ? $"{Figure(known.Low)} to {Figure(known.High)}" : "none";

    /// <summary>The second marker against the first.</summary>
    public static string Leaning(double levels) =>
        Math.Abs(levels) < Lean
            ? "much alike"
            : $"{(levels > 0 ? "kinder" : "stricter")} by {NumberText.Fixed(Math.Abs(levels), 1)} of a level";

    /// <summary>The six coefficients by the names that Shrout and Fleiss (1979) gave them.</summary>
    public static IEnumerable<(string Name, Coefficient Coefficient)> Named(IntraclassCorrelations points) =>
        [
            ("(1,1), one mark", points.OneSingle),
            ("(2,1), one mark", points.TwoSingle),
            ("(3,1), one mark", points.ThreeSingle),
            ("(1,k), mean of both", points.OneMean),
            ("(2,k), mean of both", points.TwoMean),
            ("(3,k), mean of both", points.ThreeMean),
        ];

    /// <summary>The finding in a few sentences.</summary>
    public static string Summary(MarkerAgreement work)
    {
        if (work.Students < 2)
            return $"{Phrases.Count(work.Students, "student was", "students were")} marked by both: nothing can be said of their agreement.";
        var students = Phrases.Count(work.Students, "student");
        var leaning =
            work.MeanDifference == 0
                ? "On average both gave the same points."
                : $"On average the second gave {NumberText.Points(Math.Abs(work.MeanDifference))} of {NumberText.Points(work.Marking.Scale.OutOf)} points {(work.MeanDifference > 0 ? "more" : "less")}.";
        if (work.Points is not { TwoSingle: var single })
            return $"Both marked {students}. {leaning} All students have the same points, so that no correlation can be computed.";
        var interval = single.Interval is { } known ? $" (95 % interval {Figure(known.Low)} to {Figure(known.High)})" : "";
        var few =
            work.Students < MarkerAgreement.Few
                ? $" With {students} that interval says more than the figure: whatever lies in it may be the truth."
                : "";
        return $"Both marked {students}. {leaning} One marker’s points tell students apart with an intraclass correlation (2,1) of {Figure(single.Value)}{interval}. {Meaning(single.Value)}{few}";
    }

    /// <summary>What the correlation says, for whoever meets it here first: the share of the variance that is the students'.</summary>
    private static string Meaning(double correlation) =>
        correlation <= 0
            ? "That means: who gets more and who gets less is chance as far as these marks show."
            : $"That means: of what sets one mark apart from another, some {ShareWords.Of((decimal)correlation)} lies in the students and the rest in who marked.";
}
