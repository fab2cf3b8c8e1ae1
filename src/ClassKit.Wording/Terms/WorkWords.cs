using ClassKit.Terms.Grades;
using ClassKit.Terms.Marks;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Terms;

/// <summary>What a piece of work came to, and why, in words.</summary>
public static class WorkWords
{
    /// <summary>A mark as it was given.</summary>
    public static string Of(Mark mark) =>
        mark.State switch
        {
            MarkState.Marked =>
                $"{NumberText.Points(mark.Points)} of {NumberText.Points(mark.OutOf)}{(mark.Lateness == Lateness.InTime ? "" : ", late")}{(mark.Undecided > 0 ? $", {Counted.Of(mark.Undecided, "answer")} not marked yet" : "")}",
            MarkState.Absent => "absent",
            MarkState.Excused => "excused",
            MarkState.NotDue => "not due yet",
        };

    /// <summary>How it stands in the grade, in one or two words.</summary>
    public static string Of(Standing standing) =>
        standing switch
        {
            Standing.Counts => "counts",
            Standing.Dropped => "dropped",
            Standing.Excused => "excused",
            Standing.LeftOut => "absent, left out",
            Standing.NotDue => "not due yet",
            Standing.Missing => "no mark yet",
        };

    /// <summary>Every sitting, and what made its share another one than its points.</summary>
    public static string Sittings(WorkResult work) =>
        work.Sittings.Count == 0 ? "no mark yet" : string.Join("; ", work.Sittings.Select(sitting => Sitting(sitting, work)));

    /// <summary>
    /// What made the points of work at the bench: the level of every criterion, with what it earned; empty for work that was not marked so.
    /// </summary>
    public static string Criteria(Mark mark)
    {
        ArgumentNullException.ThrowIfNull(mark);
        List<CriterionMark> seen = [.. mark.Criteria.Where(criterion => criterion.Seen.Count > 0)];
        return seen.Count == 0
            ? ""
            : $"{(seen[0].Seen.Count > 1 ? "The mean of two markers. " : "")}{string.Join("; ", seen.Select(Criterion))}.";
    }

    private static string Criterion(CriterionMark mark) =>
        $"{mark.Criterion}: {string.Join(" and ", mark.Seen.Distinct().Select(level => $"“{level}”"))}, {NumberText.Points(mark.Share * mark.OutOf)} of {NumberText.Points(mark.OutOf)}";

    private static string Sitting(SittingResult sitting, WorkResult work)
    {
        var name =
            sitting.Attempt.Sitting == 1 ? ""
            : sitting.Attempt.Sitting == 2 ? "resit: "
            : $"resit {sitting.Attempt.Sitting - 1}: ";
        var late =
            sitting.LateOff > 0 ? $", less {ShareWords.Of(sitting.LateOff)} of that"
            : sitting.Attempt.Mark.Lateness == Lateness.LateAndSettled ? " (taken off already)"
            : "";
        var capped = sitting.IsCapped ? $", as a resit {ShareWords.Of(sitting.Share!.Value)}" : "";
        var counts = work.Sittings.Count(one => one.Share is not null) > 1 && sitting == work.Counted ? " (this one counts)" : "";
        return name + Of(sitting.Attempt.Mark) + late + capped + counts;
    }
}
