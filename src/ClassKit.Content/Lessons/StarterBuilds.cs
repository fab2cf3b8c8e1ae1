using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Content.Lessons;

/// <summary>
/// Reads how a starter is built: <c>1:4:4 at 24 °C for 10 h</c>, ripe starter to flour to water, and stage after stage with <c>, then</c>
/// between them.
/// </summary>
internal static partial class StarterBuilds
{
    public const string Key = "starter build";

    private const string Example =
        "Write ripe starter to flour to water, how warm and how long: `starter build: 1:4:4 at 24 °C for 10 h`; several stages with `, then` between them.";

    /// <summary>A starter keeps its hydration from build to build; a name is rounded to a few per cent.</summary>
    private const double Slack = 6;

    public static StarterBuild? Read(Fields fields, ProblemList problems)
    {
        if (!fields.Has(Key) || fields.Text(Key) is not { } text)
            return null;
        StarterBuild? build = null;
        foreach (var stage in Then().Split(text.Text))
        {
            if (Stage(stage, text, problems) is not { } read)
                return null;
            build = read with { Earlier = build };
        }
        return build;
    }

    private static StarterBuild? Stage(string stage, Located text, ProblemList problems)
    {
        var match = Shape().Match(stage.Trim());
        if (
            match.Success
            && Dimensions.Temperature.Read(
                new Located(match.Groups["heat"].Value, text.Line),
                $"`{Key}`",
                Dimensions.KitchenDegrees,
                problems
            )
                is { } heat
        )
            return new(Part("ripe"), Part("flour"), Part("water"), heat, Part("hours")) { WettedWith = TapWater.In(problems.Pantry) };
        if (!match.Success)
            problems.Add(text.Line, $"`{Key}` is `{text.Text}`", Example);
        return null;

        double Part(string name) => double.Parse(match.Groups[name].Value, CultureInfo.InvariantCulture);
    }

    /// <summary>Holds a build against the starter of the formula.</summary>
    public static void Check(StarterBuild? build, int? line, IReadOnlyList<FormulaLine> lines, ProblemList problems)
    {
        if (build is null)
            return;
        if (lines.FirstOrDefault(any => any.Ingredient.StarterOf is not null)?.Ingredient is not { } starter)
        {
            problems.Add(
                line,
                "There is a `starter build`, and the formula has no starter",
                "Add it to the formula by its hydration, `| Sourdough starter, 100 % | 40 |`; the flour in it counts among the 100 %."
            );
            return;
        }
        var hydration = PerHundred.Of(1 - starter.StarterFlourShare, starter.StarterFlourShare);
        if (Math.Abs(build.HydrationPercent - hydration) > Slack)
            problems.Add(
                line,
                FormattableString.Invariant(
                    $"The build comes to {build.HydrationPercent:0} % water on its flour, and the formula has {starter.Name}"
                ),
                "Make both the same: change the parts of the build, or name the starter by what it comes to."
            );
    }

    [GeneratedRegex(@",? then ", RegexOptions.IgnoreCase)]
    private static partial Regex Then();

    [GeneratedRegex(
        @"^(?<ripe>(?=[0.]*[1-9])[0-9]{0,4}(\.[0-9]{1,4})?)\s*:\s*(?<flour>(?=[0.]*[1-9])[0-9]{0,4}(\.[0-9]{1,4})?)\s*:\s*(?<water>(?=[0.]*[1-9])[0-9]{0,4}(\.[0-9]{1,4})?)\s+at\s+(?<heat>\S.*?)\s+for\s+(?<hours>[0-9]{1,2}(\.[0-9])?)\s*h$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Shape();
}
