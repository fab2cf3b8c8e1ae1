using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Layout;

namespace ClassKit.UseCases.Dealing;

/// <summary>
/// How exercises stand on their sheets, as it stands in dealt.json: columns counted from 1, and the row of the first title; <c>Start</c>
/// only where the first sheet is laid out otherwise.
/// </summary>
internal sealed record PlanEntry(
    int Tag,
    int Label,
    int Value,
    int Unit,
    int Note,
    int FirstRow,
    bool OneSheet,
    PlanEntry.StartEntry? Start = null
)
{
    private const int LastFirstRow = 1_000;

    /// <summary>A plan as it stands in the file.</summary>
    /// <remarks>The names of sheets stand in the lists of every student.</remarks>
    public static PlanEntry? Of(PracticePlan plan) =>
        plan with { SheetsAsDealt = null } == PracticePlan.Usual
            ? null
            : new(
                plan.Columns.Tag,
                plan.Columns.Label,
                plan.Columns.Value,
                plan.Columns.Unit,
                plan.Columns.Note,
                plan.FirstRow,
                plan.OneSheet,
                plan.Start == StartPlan.Usual ? null : new(plan.Start.Sheet, plan.Start.FirstRow, plan.Start.LabelColumn)
            );

    /// <summary>The plan that stands in a file.</summary>
    /// <exception cref="FormatException">No sheet can be laid out so.</exception>
    public static PracticePlan Model(PlanEntry? entry)
    {
        if (entry is null)
            return PracticePlan.Usual;
        int[] columns = [entry.Tag, entry.Label, entry.Value, entry.Unit, entry.Note];
        return
            columns.Distinct().Count() == columns.Length
            && columns.All(column => column is >= 1 and <= CellAddress.LastColumn)
            && entry.FirstRow is >= 1 and <= LastFirstRow
            && entry.Start
                is null
                    or { Sheet.Length: > 0, FirstRow: >= 1 and <= LastFirstRow, LabelColumn: >= 2 and < CellAddress.LastColumn }
            ? new(new(entry.Tag, entry.Label, entry.Value, entry.Unit, entry.Note), entry.FirstRow, entry.OneSheet)
            {
                Start = entry.Start is { } start ? new(start.Sheet, start.FirstRow, start.LabelColumn) : StartPlan.Usual,
            }
            : throw new FormatException("layout: no sheet has such rows and columns");
    }

    /// <summary>Where the first sheet says whose workbook it is.</summary>
    internal sealed record StartEntry(string Sheet, int FirstRow, int LabelColumn);
}
