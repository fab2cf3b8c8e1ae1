using System.Diagnostics;
using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;
using ClassKit.Wording.Dealing;
using ClassKit.Wording.Files;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Gradebooks;

/// <summary>What an instructor typed into a gradebook, and why it cannot be used.</summary>
public static class GradebookWords
{
    /// <summary>What a student reads where typed points were taken over, since a correction gives a reason.</summary>
    public const string TakenOver = "Your instructor looked at this answer and set its points.";

    /// <summary>Why points cannot be taken over, to stand behind them.</summary>
    public static string Of(TypedPointsFault fault) =>
        fault switch
        {
            TypedPointsFault.NotDealt => "the student was not dealt this exercise",
            TypedPointsFault.OutOfRange(var most) => string.Create(
                CultureInfo.InvariantCulture,
                $"expected are points from 0 to {most:0.##}"
            ),
            TypedPointsFault.OtherName(var named) =>
                $"the row has the name “{ShownName.Of(named)}”, which is not whose id it has: put the row right, or decide on the student’s own page",
            TypedPointsFault.OtherwiseCorrected => "corrections.csv has other points for it: change them there",
            _ => throw new UnreachableException($"No words for {fault}."),
        };

    /// <summary>Of a gradebook that cannot be read, and what to do.</summary>
    public static string Of(UnreadGradebook gradebook)
    {
        ArgumentNullException.ThrowIfNull(gradebook);
        return $"{gradebook.File} was changed, and what was typed into it cannot be read: {Of(gradebook.Why)}. Points that you decide on can go into corrections.csv.";
    }

    /// <summary>One line of points that were typed: where, whose, what was there and what is.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="exercises">What was dealt, in order.</param>
    public static string Of(TypedPoints typed, IReadOnlyList<Exercise> exercises)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var before = typed.Before is { } graded ? Points(graded) : "?";
        var now =
            typed.Points is { } points ? Points(points)
            : typed.Typed.Length == 0 ? "nothing"
            : $"“{ShownName.Of(typed.Typed)}”";
        return $"{typed.File}, {typed.Cell}: {typed.Student.Shown}, {PartLabel.Of(exercises, typed.Exercise, typed.Part)}: {before} → {now}";
    }

    private static string Of(GradebookFault fault) =>
        fault switch
        {
            GradebookFault.Refused(var why) => RefusalWords.Of(why).TrimEnd('.'),
            GradebookFault.NoGradebook => "it is no gradebook",
            GradebookFault.NoPoints(var sheet, var column) => $"it has no sheet {sheet} with a column {column}",
            GradebookFault.NoAnswers(var sheet) =>
                $"it has no sheet {sheet} that says what was graded, so that what was typed cannot be told from it",
            GradebookFault.Unopened(var message) => message.TrimEnd('.'),
            _ => throw new UnreachableException($"No words for {fault}."),
        };

    private static string Points(decimal points) => points.ToString("0.##", CultureInfo.InvariantCulture);
}
