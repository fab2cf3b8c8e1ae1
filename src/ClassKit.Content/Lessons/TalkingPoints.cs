using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>
/// Reads what the instructor does and says: <c>- **Batter buns: Mix.** What happens.</c> and below it what to say, quoted with <c>&gt;</c>.
/// </summary>
internal static class TalkingPoints
{
    private const string Example = "- **Batter buns: Mix.** What happens.";

    private static readonly Dictionary<string, ClassMoment> Moments = new(StringComparer.OrdinalIgnoreCase)
    {
        ["Begin"] = ClassMoment.Begin,
        ["Tasting"] = ClassMoment.Tasting,
        ["Clean up"] = ClassMoment.CleanUp,
    };

    /// <summary>The points, held against the breads that they belong to.</summary>
    /// <param name="section">The section.</param>
    /// <param name="texts">The texts of the file.</param>
    /// <param name="formulas">The lesson's breads, as many as could be read.</param>
    /// <param name="allRead">False if some bread could not be read; then none is called unknown.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static IReadOnlyList<TalkingPoint> Read(
        Section? section,
        LessonTexts texts,
        IReadOnlyList<LessonFormula> formulas,
        bool allRead,
        ProblemList problems
    ) =>
        [
            .. Lists
                .Entries(section, problems)
                .Select(entry =>
                    NamedItem.Read(entry.Text, Example, problems) is { } item
                        ? Point(
                            item,
                            texts.Read(item.Text),
                            texts.Read(entry.Text with { Text = entry.Quote }),
                            formulas,
                            allRead,
                            problems
                        )
                        : null
                )
                .OfType<TalkingPoint>(),
        ];

    private static TalkingPoint? Point(
        NamedItem item,
        TextTemplate what,
        TextTemplate say,
        IReadOnlyList<LessonFormula> formulas,
        bool allRead,
        ProblemList problems
    )
    {
        if (Moments.TryGetValue(item.Name.Text, out var moment))
            return new(moment, "", "", what, say);
        var colon = item.Name.Text.IndexOf(':', StringComparison.Ordinal);
        if (colon > 0)
            return
                BreadStep.Find(
                    item.Name.Text[..colon].Trim(),
                    item.Name.Text[(colon + 1)..].Trim(),
                    item.Name.Line,
                    formulas,
                    allRead,
                    problems
                )
                    is var (formula, step)
                ? new(ClassMoment.Step, formula, step, what, say)
                : null;
        problems.Add(
            item.Name.Line,
            $"`{item.Name.Text}` is no moment of the class",
            $"Write {string.Join(", ", Moments.Keys.Select(name => $"`{name}`"))} or a bread and its step, as in `{Example}`. {NearestWord.Advice(item.Name.Text, Moments.Keys)}"
        );
        return null;
    }
}
