using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Serving;
using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Bench;

namespace ClassKit.Desk.Marks;

/// <summary>
/// What stood in the fields of a work's page when it was shown. Held against what is sent, it says what somebody typed: everything else of
/// an older page is only how the files were then, and must never be written over what was kept since.
/// </summary>
/// <param name="Fields">By their names, each with what it is of, in words, and what stood in it.</param>
internal sealed record ShownWork(IReadOnlyDictionary<string, (string Label, string Value)> Fields)
{
    /// <summary>The field that says how the levels were when the page was shown.</summary>
    public const string Levels = "levels";

    /// <summary>The fields as the files are now.</summary>
    /// <param name="typed">The work's column in the table of marks.</param>
    /// <param name="students">Who stands in it.</param>
    /// <param name="form">What is marked at the bench; null for other work.</param>
    /// <param name="seen">What was seen there so far; null for nothing.</param>
    public static ShownWork Of(TypedWork typed, IReadOnlyList<Student> students, BenchForm? form, BenchSheet? seen)
    {
        Dictionary<string, (string, string)> fields = [];
        foreach (var sitting in new[] { 1, 2 })
        {
            var cells = typed.Cells(sitting);
            foreach (var student in students)
            {
                var cell = TypedCell.Of(cells.GetValueOrDefault(student.Id, ""));
                var label = student.Shown + (sitting == 2 ? ", resit" : "");
                fields[TypedWork.Field(student.Id, sitting)] = (label, cell.Points);
                fields[TypedWork.WordField(student.Id, sitting)] = (label, cell.Word);
            }
        }
        foreach (var student in form?.Students ?? [])
        {
            foreach (var (at, criterion) in form!.Scale.Criteria.Index())
                fields[WorkPage.Field(form, student.Id, criterion.Name)] = (
                    $"{student.Shown}, {criterion.Name}",
                    seen?.LevelOf(student.Id, at) is { } level ? form.Scale.LevelNames[level] : ""
                );
            fields[WorkPage.Field(form, student.Id, BenchFiles.Comment)] = (
                $"{student.Shown}, in your words",
                seen?.Comments.GetValueOrDefault(student.Id)?.Trim() ?? ""
            );
        }
        foreach (var (who, words) in Many(form))
        foreach (var criterion in form!.Scale.Criteria)
            fields[WorkPage.Field(form, who, criterion.Name)] = ($"{words}, {criterion.Name}", "");
        return new(fields);
    }

    /// <summary>What was typed into a field; null where it is as it was shown, or was not sent.</summary>
    public string? Typed(Visit visit, string name) =>
        visit.Sent(name) is { } sent && Fields.TryGetValue(name, out var shown) && sent != shown.Value ? sent : null;

    /// <summary>Everything that was typed, each with what it is of, and with what is kept now where that was changed as well.</summary>
    /// <param name="visit">The request.</param>
    /// <param name="now">The fields as the files are now.</param>
    public IEnumerable<string> AllTyped(Visit visit, ShownWork now) =>
        from field in Fields
        let typed = Typed(visit, field.Key)
        where typed is not null
        let kept = now.Fields.GetValueOrDefault(field.Key, field.Value).Value
        select $"{field.Value.Label}: {Word(typed)}{(kept == field.Value.Value || kept == typed ? "" : $" (kept meanwhile: {Word(kept)})")}";

    private static string Word(string value) => value.Length > 0 ? value : "nothing";

    /// <summary>That the page was an older one, with what was typed into it.</summary>
    /// <param name="typed">What was typed, each with what it is of; null where that is not known any more.</param>
    public static Diagnostic Meanwhile(IReadOnlyList<string>? typed) =>
        new(
            "",
            null,
            "The marks were changed meanwhile, in another tab or another program",
            typed switch
            {
                null => "Nothing was written over them. Below stands what is kept now: type again what is to be changed.",
                { Count: 0 } => "Nothing was written over them, and you had changed nothing here. Below stands what is kept now.",
                _ =>
                    $"Nothing was written over them. Below stands what is kept now, with what you had typed in its place: {string.Join("; ", typed)}. Look at it, and keep it.",
            }
        );

    private static IEnumerable<(string Who, string Words)> Many(BenchForm? form) =>
        form is null
            ? []
            : Enumerable
                .Range(1, form.Teams)
                .Select(team => (TypedBench.Team(team), $"Team {form.TeamName(team)}"))
                .Prepend((TypedBench.Everybody, "Everybody"));
}
