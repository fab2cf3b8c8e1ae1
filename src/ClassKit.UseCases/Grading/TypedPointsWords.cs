using System.Globalization;
using ClassKit.Grading;

namespace ClassKit.UseCases;

/// <summary>What the terminal says of points typed into a gradebook.</summary>
internal static class TypedPointsWords
{
    private const string Option = "--take-over";

    public static IEnumerable<string> Of(ClassGrades grades)
    {
        foreach (var note in grades.UnreadGradebooks) yield return note;
        if (grades.TakenOver.Count > 0)
            yield return $"{Count(grades.TakenOver.Count)} typed into the gradebook {(grades.TakenOver.Count == 1 ? "is" : "are")} taken over into corrections.csv:";
        foreach (var one in grades.TakenOver) yield return Line(one);
        if (grades.Waiting.Count == 0) yield break;
        yield return $"{Count(grades.Waiting.Count)} typed into the gradebook {(grades.Waiting.Count == 1 ? "waits" : "wait")} to be taken over, and the grades go without:";
        foreach (var one in grades.Waiting) yield return Line(one) + (one.Problem.Length > 0 ? $" ({one.Problem})" : "");
        if (grades.Waiting.Any(one => one.Problem.Length == 0)) yield return $"Run the same again with {Option} to put them into corrections.csv.";
    }

    private static string Count(int count) => count == 1 ? "The points of one answer" : string.Create(CultureInfo.InvariantCulture, $"The points of {count} answers");

    private static string Line(TypedPoints one) => string.Create(
        CultureInfo.InvariantCulture,
        $"  {one.File}, {one.Cell}: {one.Student.Shown}, {one.Asked}: {(one.Before is { } before ? $"{before:0.##}" : "?")} → {(one.Points is { } points ? $"{points:0.##}" : one.Typed.Length == 0 ? "nothing" : $"“{one.Typed}”")}");
}
