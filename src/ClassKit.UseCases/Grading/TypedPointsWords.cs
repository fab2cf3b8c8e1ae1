using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Grading.Results;
using ClassKit.Wording.Gradebooks;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor is told of points typed into a gradebook.</summary>
internal static class TypedPointsWords
{
    public static IEnumerable<string> Of(ClassGrades grades)
    {
        foreach (var gradebook in grades.UnreadGradebooks) yield return GradebookWords.Of(gradebook);
        if (grades.TakenOver.Count > 0)
            yield return $"{Count(grades.TakenOver.Count)} typed into the gradebook {(grades.TakenOver.Count == 1 ? "is" : "are")} taken over into corrections.csv:";
        foreach (var one in grades.TakenOver) yield return Line(one);
        if (grades.Waiting.Count == 0) yield break;
        yield return $"{Count(grades.Waiting.Count)} typed into the gradebook {(grades.Waiting.Count == 1 ? "waits" : "wait")} to be taken over, and the grades go without:";
        foreach (var one in grades.Waiting) yield return Line(one) + (one.Fault is { } fault ? $" ({GradebookWords.Of(fault)})" : "");
    }

    public static IEnumerable<Remedy> Remedies(ClassGrades grades) => grades.Waiting.Any(one => one.Fault is null) ? [Remedy.TakeOverPoints] : [];

    private static string Count(int count) => count == 1 ? "The points of one answer" : string.Create(CultureInfo.InvariantCulture, $"The points of {count} answers");

    private static string Line(TypedPoints one) => "  " + GradebookWords.Of(one);
}
