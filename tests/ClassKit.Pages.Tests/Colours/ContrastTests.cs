using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ClassKit.Pages.Layout;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Colours;

public sealed partial class ContrastTests
{
    /// <summary>
    /// Contrast with white: calculated from the WCAG 2.2 formula; #767676 and #949494 are the well-known last greys that pass.
    /// </summary>
    [Theory]
    [InlineData("#000000", 21.00)]
    [InlineData("#767676", 4.54)]
    [InlineData("#777777", 4.48)]
    [InlineData("#949494", 3.03)]
    [InlineData("#959595", 2.995)]
    public void The_checker_agrees_with_known_ratios(string colour, double ratio) =>
        Assert.Equal(ratio, Contrast.Ratio(colour, "#ffffff"), 0.006);

    /// <summary>WCAG 2.2, 1.4.3: text needs 4.5:1. Every text colour on every surface, so that no page can combine a bad pair.</summary>
    [Fact]
    public void Every_text_colour_is_readable_on_every_surface() =>
        Each(
            (palette, failures) =>
            {
                foreach (var text in palette.Kind("text").Where(name => name != "--text-inverse"))
                foreach (var surface in palette.Kind("surface"))
                    Check(palette, text, surface, 4.5, failures);
            }
        );

    [Fact]
    public void Inverse_text_is_readable_on_every_fill() =>
        Each(
            (palette, failures) =>
            {
                foreach (var fill in palette.Kind("fill"))
                    Check(palette, "--text-inverse", fill, 4.5, failures);
            }
        );

    [Fact]
    public void Ink_is_readable_on_every_tint() =>
        Each(
            (palette, failures) =>
            {
                Assert.NotEmpty(palette.Kind("tint"));
                foreach (var tint in palette.Kind("tint"))
                    Check(palette, "--text-ink", tint, 4.5, failures);
            }
        );

    /// <summary>
    /// Mid grey, #777777, has a lightness of 50 (ISO/CIE 11664-4:2019, worked out by hand: luminance 0.1845, its cube root 0.5693).
    /// </summary>
    [Fact]
    public void The_checker_knows_the_lightness_of_mid_grey() => Assert.Equal(50.04, Contrast.Lightness("#777777"), 0.05);

    /// <summary>
    /// In the order in which charts show outcomes, right is darkest in print and each next one lighter, so that in grey good and bad are
    /// never taken for each other. The difference of neighbours is 10 of 100 at least, several times what is just seen (about 1: CIE 1976,
    /// common practice); what stands behind the scale is 3 from any. In dark the scale runs the other way, with less room: 7.
    /// </summary>
    [Fact]
    public void Shares_of_a_bar_are_a_scale_in_grey_print()
    {
        string[] order = ["--fill-accent", "--tint-followed", "--tint-typed", "--tint-turn", "--tint-wrong", "--surface-raised"];
        foreach (var (palette, least) in new[] { (Palette.Light, 10), (Palette.Print, 10), (Palette.Dark, -7) })
        {
            var lightness = order.Select(name => Contrast.Lightness(palette[name])).ToList();
            Assert.All(lightness.Zip(lightness.Skip(1)), pair =>
                Assert.InRange((pair.Second - pair.First) * Math.Sign(least), Math.Abs(least), 100)
            );
            Assert.All(lightness, one => Assert.InRange(Math.Abs(one - Contrast.Lightness(palette["--tint-other"])), 3, 100));
        }
    }

    /// <summary>WCAG 2.2, 1.4.11: what a chart is read by needs 3:1. Hairlines between rows carry no information.</summary>
    [Fact]
    public void Fills_and_strong_lines_stand_out_from_every_surface() =>
        Each(
            (palette, failures) =>
            {
                foreach (var mark in palette.Kind("fill").Append("--line-strong"))
                foreach (var surface in palette.Kind("surface"))
                    Check(palette, mark, surface, 3, failures);
            }
        );

    [Fact]
    public void Colours_are_named_in_the_palette_and_nowhere_else()
    {
        var rules = Stylesheet.Text[Stylesheet.Text.IndexOf("--serif:", StringComparison.Ordinal)..];
        Assert.DoesNotMatch(@"#[0-9a-fA-F]{3,8}\b|\b(rgb|hsl|oklch)a?\(", rules);
        Assert.All(SamplePages.All.Values, html =>
            Assert.Empty(new HtmlParser().ParseDocument(html).QuerySelectorAll("[style], [fill]:not([fill^='url(#']), [stroke]"))
        );
    }

    /// <summary>Text takes its colour from the text colours and stands on surfaces: the pairs above are all there are.</summary>
    [Fact]
    public void Rules_use_text_colours_for_text_and_surfaces_for_grounds()
    {
        var rules = Stylesheet.Text[Stylesheet.Text.IndexOf("--serif:", StringComparison.Ordinal)..];
        var declarations = Declaration().Matches(rules);
        Assert.NotEmpty(declarations);
        foreach (Match declaration in declarations)
        {
            var (property, value) = (declaration.Groups[1].Value, declaration.Groups[2].Value.Trim());
            var allowed = property == "color" ? @"^(var\(--text-[a-z]+\)|inherit)$" : @"^(var\(--surface-[a-z]+\)|none)$";
            Assert.Matches(allowed, value);
        }
        foreach (Match rule in SvgTextRule().Matches(rules))
            Assert.Matches(@"fill: var\(--text-", rule.Value);
    }

    /// <summary>In charts, text stands on the page, on a plate, or in inverse on a solid fill.</summary>
    [Fact]
    public void Inverse_text_in_charts_stands_on_solid_fills_only()
    {
        var parser = new HtmlParser();
        var texts = SamplePages.All.Values.SelectMany(html => parser.ParseDocument(html).QuerySelectorAll("svg text")).ToList();
        Assert.NotEmpty(texts);
        foreach (var text in texts)
        {
            var chart = text.Closest("svg")!;
            var beneath = chart.QuerySelector("rect.plate")
                ?? (chart.ClassList.Contains("timeline") ? BarOf(text) : chart.ParentElement!.QuerySelector("rect"));
            var isInverse = text.ClassList.Contains("inverse-text");
            if (beneath is not null)
                Assert.Equal(
                    isInverse,
                    beneath.ClassList.Any(name => name.StartsWith("fill-", StringComparison.Ordinal) && name != "fill-paper")
                );
            else
                Assert.False(isInverse);
        }
    }

    /// <summary>The bar that a text is drawn on: the first in the innermost group that has one.</summary>
    private static IElement? BarOf(IElement text)
    {
        for (var group = text.ParentElement; group is { LocalName: "g" }; group = group.ParentElement)
        {
            if (group.Children.FirstOrDefault(child => child.LocalName == "rect") is { } bar)
                return bar;
        }
        return null;
    }

    private static void Each(Action<Palette, List<string>> check)
    {
        var failures = new List<string>();
        foreach (var palette in Palette.All)
            check(palette, failures);
        Assert.Empty(failures);
    }

    private static void Check(Palette palette, string one, string other, double wanted, List<string> failures)
    {
        var ratio = Contrast.Ratio(palette[one], palette[other]);
        if (ratio < wanted)
            failures.Add($"{palette.Name}: {one} on {other} has {ratio:F2}, needs {wanted}");
    }

    [GeneratedRegex(@"(?<![-\w])(color|background|background-color):\s*([^;}]+)[;}]")]
    private static partial Regex Declaration();

    [GeneratedRegex(@"svg (text|\.[a-z]+-text) \{[^}]*\}")]
    private static partial Regex SvgTextRule();
}
