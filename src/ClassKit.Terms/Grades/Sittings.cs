using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;

namespace ClassKit.Terms.Grades;

/// <summary>Settles which sitting of a piece of work counts, and for how much.</summary>
internal static class Sittings
{
    public static WorkResult Settle(Assignment assignment, IEnumerable<Attempt> attempts, GradeRule rule)
    {
        List<SittingResult> sittings = [];
        foreach (var attempt in attempts.OrderBy(attempt => attempt.Sitting))
            sittings.Add(
                Worth(
                    attempt,
                    isFirst: !sittings.Exists(earlier => earlier.Attempt.Mark.State is MarkState.Marked or MarkState.Absent),
                    rule
                )
            );

        if (Counted(sittings, rule.Resit.Choice) is { } counted)
            return new(assignment, sittings, counted, Standing.Counts, counted.Share);
        return sittings.LastOrDefault()?.Attempt.Mark.State switch
        {
            MarkState.Absent when rule.Absence == AbsenceRule.Zero => new(assignment, sittings, null, Standing.Counts, 0),
            MarkState.Absent => new(assignment, sittings, null, Standing.LeftOut, null),
            MarkState.Excused => new(assignment, sittings, null, Standing.Excused, null),
            MarkState.NotDue => new(assignment, sittings, null, Standing.NotDue, null),
            _ => new(assignment, sittings, null, Standing.Missing, null),
        };
    }

    private static SittingResult Worth(Attempt attempt, bool isFirst, GradeRule rule)
    {
        var mark = attempt.Mark;
        if (mark.State != MarkState.Marked)
            return new(attempt, null, 0, false);
        var off = mark.Lateness == Lateness.Late ? rule.LateOff : 0;
        var share = mark.Points / mark.OutOf * (1 - off);
        return !isFirst && share > rule.Resit.AtMost ? new(attempt, rule.Resit.AtMost, off, true) : new(attempt, share, off, false);
    }

    private static SittingResult? Counted(List<SittingResult> sittings, ResitChoice choice)
    {
        var marked = sittings.Where(sitting => sitting.Share is not null);
        return choice switch
        {
            ResitChoice.Replaces => marked.LastOrDefault(),
            ResitChoice.Better => marked.MaxBy(sitting => sitting.Share),
        };
    }
}
