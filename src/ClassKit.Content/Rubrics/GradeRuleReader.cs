using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;
using ClassKit.Terms.Rules;

namespace ClassKit.Content.Rubrics;

/// <summary>
/// Reads the rule by which the marks of a term become a grade: what sittings are worth in the front matter; categories, lines and scale as
/// tables.
/// </summary>
public static class GradeRuleReader
{
    private static readonly Dictionary<string, AbsenceRule> Absences = new()
    {
        ["zero"] = AbsenceRule.Zero,
        ["left out"] = AbsenceRule.LeftOut,
    };
    private static readonly Dictionary<string, MarkerRule> Markers = new() { ["mean"] = MarkerRule.Mean, ["first"] = MarkerRule.First };
    private static readonly Dictionary<string, TieRule> Ties = new()
    {
        ["up"] = TieRule.Up,
        ["down"] = TieRule.Down,
        ["even"] = TieRule.Even,
    };

    /// <summary>The rule, or everything that is wrong with its file.</summary>
    public static Reading<GradeRule> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<GradeRule> ReadFile(Source source)
    {
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text || FrontMatterBlock.Split(text, problems) is not { } block)
            return problems.Fail<GradeRule>();
        var fields = FrontMatterReader.Read(block.Yaml, problems);
        var resit = fields.Text("resit") is { } line ? ResitLine.Read(line, problems) : null;
        var absence = fields.Choice("absent", Absences);
        var late = fields.Has("late") ? Unit.Percent.Held((decimal)fields.Quantity("late", Dimensions.Percent, Bounds.Share, 0)) : 0;
        var marker = fields.Has("second marker") ? fields.Choice("second marker", Markers) : MarkerRule.Mean;
        var rounding = RoundingLine.Read(fields.Text("rounding"), fields.Choice("tie", Ties), problems);
        fields.Finish();

        if (Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<GradeRule>();
        var sections = new Sections(document.Sections, "##", problems, document.Deeper);
        var categories = CategoryTable.Read(sections.Required("Categories"), problems);
        var scale = ScaleTable.Read(sections.Required("Scale"), problems);
        var lines = PassLineTable.Read(sections.Optional("Must be passed"), categories, scale, problems);
        sections.Finish();
        return problems.Finish(() =>
            new GradeRule(
                Path.GetFileNameWithoutExtension(source.Path),
                document.Title.Text,
                categories,
                lines,
                scale,
                resit!,
                absence,
                late,
                marker,
                rounding!
            )
        );
    }
}
