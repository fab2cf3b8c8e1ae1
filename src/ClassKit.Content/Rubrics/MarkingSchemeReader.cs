using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Marking;

namespace ClassKit.Content.Rubrics;

/// <summary>Reads a marking scheme for calculations: shares in the front matter, and any text below for people.</summary>
public static class MarkingSchemeReader
{
    private static readonly Dictionary<string, VersionChoice> Choices = new()
    {
        ["best"] = VersionChoice.Best,
        ["newest"] = VersionChoice.Newest,
    };

    /// <summary>The scheme, or everything that is wrong with its file.</summary>
    public static Reading<MarkingScheme> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<MarkingScheme> ReadFile(Source source)
    {
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text)
            return problems.Fail<MarkingScheme>();

        if (FrontMatterBlock.Split(text, problems) is not { } block)
            return problems.Fail<MarkingScheme>();
        var fields = FrontMatterReader.Read(block.Yaml, problems);
        decimal Share(string key) => Unit.Percent.Held((decimal)fields.Quantity(key, Dimensions.Percent, Bounds.Share, 0));
        var (accuracy, followThrough, misconception, teachAgain) = (
            Share("accuracy"),
            Share("follow-through"),
            Share("misconception"),
            Share("teach again below")
        );
        decimal Optional(string key) => fields.Optional(key) is null ? 0 : Share(key);
        var (unitSlip, roundingSlip) = (Optional("unit slip"), Optional("rounding slip"));
        decimal? nearMiss = fields.Has("near miss") ? Share("near miss") : null;
        var versions = fields.Has("several versions") ? fields.Choice("several versions", Choices) : VersionChoice.Best;
        LatePolicy? late = fields.Has("late a day")
            ? new(Share("late a day"), fields.Has("late at most") ? Share("late at most") : 1)
            : null;
        if (late is null && fields.Has("late at most"))
            problems.Add(
                fields.LineOf("late at most"),
                "`late at most` limits a deduction that is not there",
                "Write `late a day: 10 %`, say, or leave both out."
            );
        int? Limit(string key) => fields.Has(key) ? fields.Whole(key, Bounds.Countable) : null;
        var total = new TotalRule(Limit("best exercises"), Limit("points at most"));
        if (fields.Has("method") && accuracy + Share("method") != 1)
            problems.Add(
                fields.LineOf("method"),
                $"`accuracy` and `method` come to {Unit.Percent.Shown(accuracy + Share("method")):0.##} %",
                "They are the two halves of a part's points and add up to 100 %."
            );
        if (misconception > Math.Min(accuracy, followThrough))
            problems.Add(
                fields.LineOf("misconception"),
                "A known wrong method would earn more than a right number",
                "Write no more than `accuracy` and `follow-through` have."
            );
        if (nearMiss > Math.Min(accuracy, followThrough))
            problems.Add(
                fields.LineOf("near miss"),
                "A wrong method near the right one would earn more than a right number",
                "Write no more than `accuracy` and `follow-through` have."
            );
        fields.Finish();

        if (Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<MarkingScheme>();
        return problems.Finish(() =>
            new MarkingScheme(
                Path.GetFileNameWithoutExtension(source.Path),
                document.Title.Text,
                accuracy,
                followThrough,
                misconception,
                teachAgain
            )
            {
                UnitSlipShare = unitSlip,
                RoundingSlipShare = roundingSlip,
                NearMissShare = nearMiss,
                Versions = versions,
                Late = late,
                Total = total,
            }
        );
    }
}
