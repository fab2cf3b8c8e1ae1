using System.Globalization;
using AngleSharp.Dom;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.Lessons.Classes;
using ClassKit.Pages.Benches;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Benches;

/// <summary>No label of the drawing overprints another one, nor a bar that it does not stand on.</summary>
/// <remarks>
/// Boxes are reckoned from the drawing itself, at its narrowest of 800 pixels and at a wide 1200, with 6.6 pixels a letter of 13 pixels:
/// the mean of common sans-serif faces, from memory.
/// </remarks>
public sealed class TimelineGeometryTests
{
    private const double Letter = 6.6;

    private sealed record Box(string Name, double Left, double Right, double Top, double Bottom)
    {
        public bool Meets(Box other) =>
            Left < other.Right - 0.5 && other.Left < Right - 0.5 && Top < other.Bottom - 0.5 && other.Top < Bottom - 0.5;

        public bool IsWithin(Box other) =>
            Left >= other.Left - 0.5 && Right <= other.Right + 0.5 && Top >= other.Top - 0.5 && Bottom <= other.Bottom + 0.5;
    }

    /// <summary>The narrowest phone that is looked at is 360 pixels wide; what is left of the first minute stays in view there.</summary>
    [Fact]
    public void On_a_phone_more_than_half_is_left_for_bars_and_names_have_room()
    {
        var names = TimelineLabels.Names * TimelineLabels.NarrowestWidth;

        Assert.True(names < 360 * 0.45, $"{names}");
        Assert.True(TimelineLabels.LettersOfAName * TimelineLabels.LetterWidth <= names, $"{names}");
    }

    [Theory]
    [InlineData(800)]
    [InlineData(1200)]
    public void Nothing_overprints_anything_in_the_plan_of_the_demo_lesson(double width) =>
        Assert.Empty(Overprints(SamplePack.Pack.Bench.Plan!, width, SamplePack.Pack.Class.Start));

    /// <summary>One oven that bakes often and briefly, and demonstrations one after the other.</summary>
    [Fact]
    public void Nothing_overprints_anything_in_crowded_plans()
    {
        for (var seed = 0; seed < Trials.Of(300, 5); seed++)
        {
            var plan = Crowded(new Random(seed));
            foreach (var width in new[] { 800.0, 1200.0 })
            {
                var faults = Overprints(plan, width, new(new(10, 45), CountsTwelve: seed % 2 == 0));
                Assert.True(faults.Count == 0, $"seed {seed}, {width}: {string.Join("; ", faults.Take(3))}");
            }
        }
    }

    /// <summary>
    /// An hour and a half over 584 pixels is 6.5 pixels a minute: three minutes have no room for a letter of 7.2 pixels with 2 to spare; by
    /// hand.
    /// </summary>
    [Fact]
    public void Steps_without_room_for_a_number_each_share_one_and_others_say_number_and_name()
    {
        TimelineBar[] bars =
        [
            new("Weigh", "1", 10, 11, BarKind.HandsOn),
            new("Mix", "2", 11, 16, BarKind.HandsOn),
            new("First rise", "3", 16, 60, BarKind.Alone),
            new("Bake", "4", 60, 66, BarKind.Oven),
        ];

        Assert.Equal(["1–2", "3 First rise", "4"], new TimelineLabels(90).Place(bars).Select(piece => piece.Label!.Text));
        Assert.Equal(
            ["1 Weigh", "2"],
            new TimelineLabels(90)
                .Place([bars[0] with { Start = 0 }, bars[1] with { Start = 11, End = 13 }])
                .Select(piece => piece.Label!.Text)
        );
    }

    /// <summary>What is set aside at the end stands on one line, however short it is.</summary>
    [Fact]
    public void Tasting_and_cleaning_up_are_named_at_the_minute_between_them()
    {
        var labels = new TimelineLabels(330).PlaceAbove([(0, 10, "begin"), (290, 315, "taste"), (315, 330, "clean")]);

        Assert.All(labels, label => Assert.Equal(0, label.Lane));
        Assert.Equal([(0.0, "start"), (315, "end"), (315, "start")], labels.Select(label => (label.Minute, label.Anchor)));
    }

    [Fact]
    public void Overprinting_would_be_seen()
    {
        var one = new Box("one", 0, 50, 0, 13);
        Assert.True(one.Meets(new("other", 40, 90, 5, 18)));
        Assert.False(one.Meets(new("beside", 55, 90, 5, 18)));
    }

    private static BenchPlan Crowded(Random random)
    {
        double[] heats = [160, 175, 190, 220];
        var breads = new List<BenchBread>();
        var steps = new List<PlannedStep>();
        var minute = random.Next(0, 30);
        while (minute < 100)
        {
            var load = new BenchLoad(Maker.OfTeam(1), breads.Count);
            var method = new List<BenchStep>();
            for (var stage = random.Next(1, 3); stage > 0; stage--)
            {
                var length = random.Next(1, 30);
                steps.Add(new(load, method.Count, minute, minute + length, 1));
                method.Add(
                    new("Bake", length, length)
                    {
                        People = 0,
                        Oven = new(Temperature.FromCelsius(heats[random.Next(heats.Length)]), 1, true),
                    }
                );
                minute += length;
            }
            breads.Add(new($"bread_{breads.Count}", random.Next(2) == 0 ? "Buttermilk muffins" : "Buns", method));
            minute += random.Next(0, 15);
        }
        var time = new ClassTime(minute + 20, random.Next(0, 12), random.Next(1, 12), random.Next(1, 8));
        var shown = new List<PlannedDemonstration>();
        for (var start = random.Next(0, 20); start < 60; start += random.Next(2, 20))
            shown.Add(new(new($"Shown {shown.Count}", 2, null), start));
        var bench = new BenchClass(
            time,
            1,
            2,
            [],
            new(1, 1, random.Next(0, 20), OvenBank.UsualWarming, OvenBank.UsualCooling),
            breads,
            [.. shown.Select(each => each.Demonstration)]
        );
        return new(bench, [new([Maker.OfTeam(1)])], steps, shown);
    }

    private static List<string> Overprints(BenchPlan plan, double width, ClassStart? start = null)
    {
        var page = Html.Parse(
            HtmlPages
                .Pack(
                    SamplePack.Pack with
                    {
                        Bench = SamplePack.Pack.Bench with { Plan = plan },
                        Class = SamplePack.Pack.Class with { Start = start },
                    }
                )
                .Single(page => page.FileName == "bench-plan.html")
                .Html
        );
        var drawing = page.QuerySelector("svg.timeline")!;
        var texts = drawing.QuerySelectorAll("text").Select(text => Text(text, width)).ToList();
        var bars = drawing.QuerySelectorAll("rect.seg").Select(bar => Bar(bar, width)).ToList();
        var hands = drawing.QuerySelectorAll("rect.seg.fill-accent").Select(bar => Bar(bar, width)).ToList();
        Assert.NotEmpty(texts);
        return
        [
            .. texts.SelectMany((one, at) => texts.Skip(at + 1).Where(one.Meets).Select(other => $"{one.Name} over {other.Name}")),
            .. texts.SelectMany(text =>
                bars.Where(bar => text.Meets(bar) && !text.IsWithin(bar) && !text.IsWithin(Run(bar, hands)))
                    .Select(bar => $"{text.Name} over a bar at {bar.Left:0}")
            ),
            .. texts.Where(text => text.Left < -0.5 || text.Right > width + 0.5).Select(text => $"{text.Name} off the drawing"),
        ];
    }

    /// <summary>The bars of hands at work that touch, from the first to the last: one label may stand on all of them.</summary>
    private static Box Run(Box bar, IReadOnlyList<Box> hands)
    {
        if (!hands.Contains(bar))
            return bar;
        var grown = hands.Where(other => other.Top == bar.Top && other.Left < bar.Right + 0.5 && bar.Left < other.Right + 0.5).ToList();
        var run = bar with { Left = grown.Min(other => other.Left), Right = grown.Max(other => other.Right) };
        while (
            hands.FirstOrDefault(other =>
                other.Top == run.Top && other.Left < run.Right + 0.5 && run.Left < other.Right + 0.5 && !other.IsWithin(run)
            )
                is { } more
        )
            run = run with { Left = Math.Min(run.Left, more.Left), Right = Math.Max(run.Right, more.Right) };
        return run;
    }

    private static Box Text(IElement text, double width)
    {
        var words = text.TextContent.Trim();
        var (length, x) = (words.Length * Letter, Percent(text, "x", width) + Number(text, "dx"));
        var left = text.GetAttribute("text-anchor") switch
        {
            "middle" => x - length / 2,
            "end" => x - length,
            _ => x,
        };
        // Ascent and descent of a line of 13 pixels.
        return new(words, left, left + length, Number(text, "y") - 10, Number(text, "y") + 3);
    }

    private static Box Bar(IElement bar, double width) =>
        new(
            "bar",
            Percent(bar, "x", width),
            Percent(bar, "x", width) + Percent(bar, "width", width),
            Number(bar, "y"),
            Number(bar, "y") + Number(bar, "height")
        );

    private static double Percent(IElement element, string name, double width) =>
        element.GetAttribute(name) is { } value && value.EndsWith('%')
            ? double.Parse(value.TrimEnd('%'), CultureInfo.InvariantCulture) / 100 * width
            : Number(element, name);

    private static double Number(IElement element, string name) =>
        element.GetAttribute(name) is { } value ? double.Parse(value, CultureInfo.InvariantCulture) : 0;
}
