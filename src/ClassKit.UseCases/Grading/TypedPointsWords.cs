using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor is told of points typed into a gradebook.</summary>
internal static class TypedPointsWords
{
    public static IEnumerable<string> Of(ClassGrades grades)
    {
        foreach (var note in grades.UnreadGradebooks) yield return note;
        if (grades.TakenOver.Count > 0)
            yield return $"{Count(grades.TakenOver.Count)} typed into the gradebook {(grades.TakenOver.Count == 1 ? "is" : "are")} taken over into corrections.csv:";
        foreach (var one in grades.TakenOver) yield return Line(one);
        if (grades.Waiting.Count == 0) yield break;
        yield return $"{Count(grades.Waiting.Count)} typed into the gradebook {(grades.Waiting.Count == 1 ? "waits" : "wait")} to be taken over, and the grades go without:";
        foreach (var one in grades.Waiting) yield return Line(one) + (one.Problem.Length > 0 ? $" ({one.Problem})" : "");
    }

    public static IEnumerable<Remedy> Remedies(ClassGrades grades) => grades.Waiting.Any(one => one.Problem.Length == 0) ? [Remedy.TakeOverPoints] : [];

    private static string Count(int count) => count == 1 ? "The points of one answer" : string.Create(CultureInfo.InvariantCulture, $"The points of {count} answers");

    private static string Line(TypedPoints one) => string.Create(
        CultureInfo.InvariantCulture,
        $"  {one.File}, {one.Cell}: {one.Student.Shown}, {one.Asked}: {(one.Before is { } before ? $"{before:0.##}" : "?")} → {(one.Points is { } points ? $"{points:0.##}" : one.Typed.Length == 0 ? "nothing" : $"“{one.Typed}”")}");
}
