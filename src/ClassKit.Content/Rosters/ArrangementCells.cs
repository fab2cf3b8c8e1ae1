using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.Content.Rosters;

/// <summary>
/// Reads what a roster's line says of a student's arrangement: columns <c>large print</c>, <c>extra time</c>, <c>due</c>, <c>leaves out</c>
/// and <c>excused from</c>, each of which may be missing or empty.
/// </summary>
internal static class ArrangementCells
{
    private static readonly string[] Yes = ["yes", "y", "x", "1", "true", "✓", "✔"];

    private static readonly string[] No = ["", "no", "n", "0", "false", "-"];

    public static Arrangement Of(RosterHead head, CsvRecord line, ProblemList problems)
    {
        var (large, extra, due, leaves) = (
            CellPieces.Of(head.Field(line, RosterField.LargePrint)),
            CellPieces.Of(head.Field(line, RosterField.ExtraTime)),
            CellPieces.Of(head.Field(line, RosterField.Due)),
            CellPieces.Of(head.Field(line, RosterField.LeavesOut))
        );
        return new(
            LargePrint(large.Always, line.Line, problems),
            ExtraTime(extra.Always, line.Line, problems),
            Due(due.Always, line.Line, problems)
        )
        {
            OnlyFor =
            [
                .. large.OnlyFor.Select(one => new WorkArrangement(one.Work, LargePrint(one.Value, line.Line, problems), null, null)),
                .. extra.OnlyFor.Select(one => new WorkArrangement(one.Work, null, ExtraTime(one.Value, line.Line, problems), null)),
                .. due.OnlyFor.Select(one => new WorkArrangement(one.Work, null, null, Due(one.Value, line.Line, problems))),
                .. leaves.OnlyFor.Select(one => new WorkArrangement(one.Work, null, null, null) { LeavesOut = [one.Value] }),
            ],
            LeavesOut = LeavesOut(leaves.Always, line.Line, problems),
            ExcusedFrom =
            [
                .. head.Field(line, RosterField.ExcusedFrom)
                    .Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                    .Distinct(StringComparer.Ordinal),
            ],
        };
    }

    /// <summary>True if a cell says yes.</summary>
    public static bool IsYes(string cell) => Yes.Contains(cell, StringComparer.OrdinalIgnoreCase);

    private static List<string> LeavesOut(string cell, int line, ProblemList problems)
    {
        List<string> ids = [.. cell.Split([';', ',', ' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal)];
        foreach (var id in ids.Where(id => !Naming.IsValid(id)))
            problems.Add(
                line,
                $"Under `leaves out` stands `{id}`, which is no exercise’s name",
                "Write the names of the exercises that are not this student's, as in `leaves out` of `three_trays; dose_baking_powder`; nothing for all of them; `Weighing for Bench day one` for one work alone."
            );
        return ids;
    }

    private static bool LargePrint(string cell, int line, ProblemList problems)
    {
        if (IsYes(cell))
            return true;
        if (!No.Contains(cell, StringComparer.OrdinalIgnoreCase))
            problems.Add(
                line,
                $"Under `large print` stands `{cell}`",
                "Write `yes`, or leave it empty; `yes for NAME` for one lesson alone."
            );
        return false;
    }

    private static decimal ExtraTime(string cell, int line, ProblemList problems)
    {
        if (No.Contains(cell, StringComparer.OrdinalIgnoreCase))
            return 0;
        // A workbook holds 25 % as 0.25; whoever types 25 means the same.
        var isPercent = cell.EndsWith('%');
        if (
            decimal.TryParse(
                cell.TrimEnd('%', ' ').Replace(',', '.'),
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var number
            )
            && (isPercent || number > Arrangement.MostExtraTime ? Unit.Percent.Held(number) : number)
                is > 0
                    and <= Arrangement.MostExtraTime
                    and var share
        )
            return share;
        problems.Add(
            line,
            $"Under `extra time` stands `{cell}`",
            "Write how much more time the student has than the others, as a share of theirs: `25 %`; `50 % for NAME` for one lesson alone."
        );
        return 0;
    }

    private static DueWish? Due(string cell, int line, ProblemList problems)
    {
        if (cell.Length == 0)
            return null;
        // Spreadsheets show a moment with a blank where the standard has a T.
        if (DueWish.Parse(cell.Replace(' ', 'T')) is { IsAnyTime: false } wish)
            return wish;
        problems.Add(
            line,
            $"Under `due` stands `{cell}`",
            "Write when this student's work is due, on the class's clocks: `2026-11-20 17:00`; nothing for when the class's is; `2026-11-20 17:00 for NAME` for one lesson alone."
        );
        return null;
    }
}
