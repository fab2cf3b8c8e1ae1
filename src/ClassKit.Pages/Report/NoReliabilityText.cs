using ClassKit.Grading.Statistics;

namespace ClassKit.Pages.Report;

/// <summary>Why nothing is said of how reliably a set ranks students.</summary>
internal static class NoReliabilityText
{
    public static string Of(NoReliability why) =>
        why switch
        {
            NoReliability.DifferentSets =>
                "Students had different sets of equal weight. How consistently a set ranks students (its reliability) can only be told where all were asked the same, so nothing is said of it here. Each part is held against what those who were asked it earned of their own sets.",
            NoReliability.OnePart =>
                "There is only one part. How consistently a set ranks students (its reliability) is told by how its parts agree, so there is nothing to say of it here.",
            NoReliability.NobodyDiffers => "All totals are equal, so there is nothing to say about how reliably the set ranks students.",
            NoReliability.TooFewStudents => "It takes two graded workbooks and more to say how reliably the set ranks students.",
        };
}
