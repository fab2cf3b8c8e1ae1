using System.Diagnostics;
using ClassKit.Grading.OnPaper;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Files;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Papers;

/// <summary>What an instructor is told of a workbook of answers on paper, or of a cell of it, that cannot be used.</summary>
public static class PaperFaultWords
{
    private static readonly string[] Crosses = ["x", "×", "✗", "✘", "☒"];

    /// <summary>Why the whole workbook cannot be used, without a full stop.</summary>
    public static string Of(PaperRefusal refusal) =>
        refusal switch
        {
            PaperRefusal.Unreadable(var why) => RefusalWords.Of(why).TrimEnd('.'),
            PaperRefusal.NoTable(var head) => $"It has no table with a column {head} and the parts that were dealt",
            PaperRefusal.OtherDeal(var codes, var wanted) => $"It is for deal {string.Join(", ", codes)}, and this is deal {wanted}",
            _ => throw new UnreachableException($"No words for {refusal}."),
        };

    /// <summary>What became of a cell, in one sentence.</summary>
    public static string Of(PaperFault fault) =>
        fault switch
        {
            PaperFault.UnknownStudent(var cell, var id) => id.Text.Length == 0
                ? $"{cell}: the row has answers and no id, so that nobody has them. Type whose they are."
                : $"{cell}: nobody of the class has the id “{Quoted.Short(id)}”, so that nobody has the row's answers.",
            PaperFault.SecondRow(var cell, var student) => $"{cell}: {student.Shown} has a row above, and that one counts.",
            PaperFault.OtherName(var cell, var student, var name) =>
                $"{cell}: the row has {student.Shown}'s id ({student.Id}) and the name “{Quoted.Short(name)}”, so that nobody has its answers. Put the ids back beside their names.",
            PaperFault.NotDealt(var cell, var student, var tag) => $"{cell}: {student.Shown} was not dealt {tag}.",
            PaperFault.NoTick tick when IsCross(tick) =>
                $"{Whose(tick)} ({tick.Cell}): “{Quoted.Short(tick.Found)}” marks what is right for some and what is wrong for others, and was taken for nothing. {Ticks}",
            PaperFault.NoTick tick =>
                $"{Whose(tick)} ({tick.Cell}): “{Quoted.Short(tick.Found)}” is neither a tick nor nothing, and was taken for nothing. {Ticks}",
            _ => throw new UnreachableException($"No words for {fault}."),
        };

    /// <summary>Several cells that hold something else in place of a tick: what holds of all of them once, and a line each with whose it is.</summary>
    /// <param name="ticks">At least one.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<PaperFault.NoTick> ticks)
    {
        ArgumentNullException.ThrowIfNull(ticks);
        return
        [
            $"{Counted.Of(ticks.Count, "cell")} for ticks on paper {Counted.Noun(ticks.Count, "holds", "hold")} something else and {Counted.Noun(ticks.Count, "was", "were")} taken for nothing. {Ticks}",
            .. ticks.Select(tick => $"  {Whose(tick)}: “{Quoted.Short(tick.Found)}” ({tick.Cell})"),
        ];
    }

    private const string Ticks = "Type ✓ where the working shows the method, and leave the cell empty where it does not.";

    private static bool IsCross(PaperFault.NoTick tick) => Crosses.Contains(tick.Found.Text.Trim(), StringComparer.OrdinalIgnoreCase);

    private static string Whose(PaperFault.NoTick tick) => $"{tick.Student.Shown}, {tick.Tag}";
}
