using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.Wording.Outcomes;

namespace ClassKit.Pages.Report;

/// <summary>One part as the class report tells it.</summary>
/// <param name="Label">Its number and letter: 2a.</param>
/// <param name="Summary">How the class did.</param>
public sealed record ReportPart(string Label, PartSummary Summary)
{
    /// <summary>How many had each outcome, as pages show it.</summary>
    public IReadOnlyDictionary<Outcome, int> Counts { get; } = OutcomeText.ShownCounts(Summary);

    /// <summary>The share of right answers as text.</summary>
    public string Right => Summary.RightShare is { } share ? NumberText.Share(share) : Marked;

    /// <summary>The share of answers that show the method as text.</summary>
    public string Understood => Summary.UnderstoodShare is { } share ? NumberText.Share(share) : Marked;

    private string Marked => Summary.Marked > 0 ? $"{Summary.MarkedInFull} of {Summary.Marked} marked got all points" : "Not judged";

    /// <summary>How many gave the right number.</summary>
    public int RightCount => Summary.Counts[Outcome.Sound] + Summary.Counts[Outcome.ValueOnly];

    /// <summary>Every part of a class, in workbook order.</summary>
    public static IReadOnlyList<ReportPart> Of(ClassSummary summary)
    {
        var parts = new List<ReportPart>();
        foreach (var (exercise, own) in summary.Parts.GroupBy(part => part.Exercise.Id).Index())
            parts.AddRange(own.Select((part, index) => new ReportPart($"{exercise + 1}{Phrases.Letter(index)}", part)));
        return parts;
    }

    /// <summary>The part that an answer belongs to.</summary>
    public static ReportPart Find(IReadOnlyList<ReportPart> parts, AnswerGrade answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return Find(parts, answer.Exercise.Id, answer.Part.Id);
    }

    /// <summary>The part that a summary is of.</summary>
    public static ReportPart Find(IReadOnlyList<ReportPart> parts, PartSummary summary)
    {
        ArgumentNullException.ThrowIfNull(summary);
        return Find(parts, summary.Exercise.Id, summary.Part.Id);
    }

    /// <summary>The part of an exercise by the ids of both.</summary>
    public static ReportPart Find(IReadOnlyList<ReportPart> parts, string exercise, string part)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return parts.First(one => one.Summary.Exercise.Id == exercise && one.Summary.Part.Id == part);
    }
}
