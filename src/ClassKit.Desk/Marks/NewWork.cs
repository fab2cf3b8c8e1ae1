using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Terms.Work;

namespace ClassKit.Desk.Marks;

/// <summary>A piece of work as it was typed into a form, as the cells of its row.</summary>
internal static class NewWork
{
    public static IReadOnlyDictionary<string, string> Read(Visit visit, TermEntry term, IReadOnlyList<RoundState> judged)
    {
        var folder = Path.GetDirectoryName(term.File)!;
        var kind = Enum.GetValues<WorkKind>().FirstOrDefault(known => WorkWords.InFile(known) == visit.Typed("kind"), WorkKind.TypedMarks);
        return new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["work"] = OneLine.Of(visit.Typed("work")),
            ["kind"] = WorkWords.InFile(kind),
            ["category"] = OneLine.Of(visit.Typed("category")),
            ["out of"] = kind switch
            {
                WorkKind.CalculationSet => "",
                WorkKind.BenchWork => BeginTerm.Beside(folder, BeginTerm.Rubric(visit)),
                WorkKind.WrittenAnswers or WorkKind.TypedMarks => OneLine.Of(visit.Typed("out-of")),
            },
            ["marks"] =
                kind == WorkKind.CalculationSet && judged.FirstOrDefault(state => state.Round.Name == visit.Typed("round")) is { } round
                    ? BeginTerm.Beside(folder, round.Round.Graded)
                    : "",
        };
    }
}
