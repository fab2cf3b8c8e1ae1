using AngleSharp.Dom;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Packs;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>One quantity, one value, wherever it stands: what the class compares is told of one piece.</summary>
public sealed class OneQuantityTests
{
    private static readonly ComputedPack Pack = BuiltPack.DemoPack;

    /// <summary>
    /// Chart, slide, tables: the gas that a bread holds, baked, is the same number everywhere, and that of the piece which the class
    /// measures.
    /// </summary>
    [Fact]
    public void The_gas_held_is_that_of_one_piece_on_every_page()
    {
        foreach (var bread in Pack.Comparison)
        {
            var title = bread.Bread.Formula.Title;
            var onSlide = Figure("projector.html", title);
            Assert.Equal(onSlide, Figure("comparison.html", title));
            Assert.StartsWith(onSlide, Row("#held", "Held once the walls are set", title), StringComparison.Ordinal);
            Assert.Equal(onSlide, Row("#formulas", "Gas held in one piece, baked", title));
            Assert.Equal(
                bread.PerPiece.Held.Baked.Typical.Millilitres,
                double.Parse(onSlide.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture),
                5.0
            );
        }
    }

    [Fact]
    public void No_page_compares_the_breads_by_the_flour_but_in_the_row_that_says_so()
    {
        foreach (var (file, page) in BuiltPack.Demo.Pages.Concat(BuiltPack.Mountain.Pages))
            Assert.All(page.QuerySelectorAll("caption, figcaption, .kicker, h2, text").Select(text => text.Words()), text =>
                Assert.False(text.Contains("100 g of flour", StringComparison.Ordinal), $"{file}: {text}")
            );
    }

    /// <summary>
    /// Seven columns of four repeated sentences were read by nobody: what a series changes stands once, with the figures that differ, and
    /// every other table has a column for each bread as it is written.
    /// </summary>
    [Fact]
    public void A_series_stands_under_the_bread_that_it_changes_and_is_no_column_of_its_own()
    {
        var page = BuiltPack.LongMorning["comparison.html"];
        var titles = new[] { "Starter rolls", "Yeast rolls", "Powder rolls" };
        Assert.All(page.QuerySelectorAll("#held ~ .wide table, #formulas ~ .wide table"), table =>
            Assert.Equal(titles, table.QuerySelectorAll("thead th").Skip(1).Select(head => head.Words()))
        );

        var changed = page.QuerySelector("table.changed")!;
        Assert.Equal(["Yeast rolls, 3 ways", "Powder rolls, 3 ways"], changed.QuerySelectorAll(".group").Select(group => group.Words()));
        Assert.Equal(
            ["Second rise 8–10 min team 2", "Second rise 80–90 min team 3"],
            changed.QuerySelectorAll("tbody")[0].QuerySelectorAll("tr").Skip(2).Select(row => row.QuerySelector("th")!.Words())
        );

        // What is none in every dough has no row, and what is alike is written once.
        var rows = page.QuerySelectorAll("#formulas ~ .wide table tbody tr")
            .ToDictionary(row => row.QuerySelector("th")!.Words(), row => row.QuerySelectorAll("td"));
        Assert.DoesNotContain(rows.Keys, name =>
            name.StartsWith("Egg", StringComparison.Ordinal) || name.StartsWith("Sugar", StringComparison.Ordinal)
        );
        Assert.Equal("1.8 % in each", rows["Salt, of the flour"].Single().Words());
        Assert.Equal(3, rows["All water, of the flour"].Length);
    }

    /// <summary>
    /// Seven rows of one dish of flour, and fifteen names behind a pair of scales: what is alike is set out in one row, and a changed
    /// bread's card marks the step and says nothing that the change makes wrong.
    /// </summary>
    [Fact]
    public void Lists_and_cards_of_a_series_say_what_is_alike_once_and_mark_what_is_changed()
    {
        var stations = BuiltPack.LongMorning["stations.html"];
        Assert.Equal(
            "3 × 4 g",
            stations.QuerySelectorAll("#surfaces ~ table")[0].QuerySelectorAll("tbody tr").Single().QuerySelector(".number")!.Words()
        );
        Assert.Contains(stations.QuerySelectorAll("#shared ~ .wide table")[0].QuerySelectorAll("tbody tr"), row =>
            row.Words().Contains("Weigh: all breads", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(stations.QuerySelectorAll("thead th"), head =>
            head.Words() is "From the refrigerator" or "Out of it beforehand"
        );

        var cards = BuiltPack
            .LongMorning["formula-cards.html"]
            .QuerySelectorAll(".card")
            .ToDictionary(card => card.QuerySelector("h2")!.Words());
        Assert.Equal("Second rise", cards["Yeast rolls: under-proofed"].QuerySelector(".method .changed .step-head strong")!.Words());
        Assert.Null(cards["Yeast rolls: under-proofed"].QuerySelector(".card-why"));
        Assert.Null(cards["Yeast rolls"].QuerySelector(".method .changed"));
        Assert.NotNull(cards["Yeast rolls"].QuerySelector(".card-why"));
    }

    /// <summary>
    /// Two breads of one series had the same line: each chart tells its breads apart, and all breads stand in one or are named as to be
    /// measured.
    /// </summary>
    [Fact]
    public void No_two_lines_of_a_chart_look_the_same()
    {
        var charts = BuiltPack.LongMorning["comparison.html"].QuerySelectorAll("figure:has(> .course)");
        Assert.Equal(2, charts.Length);
        Assert.All(charts, chart => Assert.Distinct(chart.QuerySelectorAll(".chart-key line").Select(line => line.ClassName)));
        Assert.All(charts, chart =>
            Assert.Equal(
                chart.QuerySelectorAll(".chart-key line").Select(line => line.ClassName),
                chart.QuerySelectorAll("path.line").Select(line => line.ClassName)
            )
        );
        Assert.Contains(
            "starter rolls, yeast rolls: over-proofed and powder rolls: stood 40 min",
            BuiltPack.LongMorning["comparison.html"].QuerySelector(".courses + .small")!.Words(),
            StringComparison.Ordinal
        );
    }

    /// <summary>
    /// Three breads are three systems: whatever differs between their formulas is told beside their heights, so that nothing is put down to
    /// the leavening alone.
    /// </summary>
    [Fact]
    public void Everything_in_which_the_breads_differ_stands_in_the_table_of_the_formulas()
    {
        foreach (
            var (role, row) in new[]
            {
                (IngredientRole.Egg, "Egg"),
                (IngredientRole.Fat, "Fat"),
                (IngredientRole.Sugar, "Sugar"),
                (IngredientRole.Salt, "Salt"),
            }
        )
        {
            Assert.True(Pack.Comparison.Select(bread => bread.Percent(role)).Distinct().Count() > 1);
            foreach (var bread in Pack.Comparison)
                Assert.StartsWith(
                    FormattableString.Invariant($"{bread.Percent(role):0.#}"),
                    Row("#formulas", row, bread.Bread.Formula.Title),
                    StringComparison.Ordinal
                );
        }
        Assert.Equal(3, Pack.Comparison.Select(bread => Row("#formulas", "Oven", bread.Bread.Formula.Title)).Distinct().Count());
        foreach (var (file, page) in BuiltPack.Demo.Pages)
        foreach (
            var claim in new[]
            {
                "is the leavening’s doing",
                "is the leavening's doing",
                "the leavening did it.",
                "everything else as equal",
            }
        )
            Assert.False(page.Body!.Words().Contains(claim, StringComparison.Ordinal), $"{file}: {claim}");
    }

    /// <summary>
    /// IAPWS steam tables: 1.67 L to 1.68 L a gram near sea level. What a popover loses in mass is what it made of steam, less what it
    /// holds.
    /// </summary>
    [Fact]
    public void Steam_is_told_as_made_held_and_lost()
    {
        var popover = Pack.Comparison.Single(bread => bread.Bread.Formula.Leavening == Leavening.Steam);
        var told = Row("#held", "As steam", popover.Bread.Formula.Title);
        Assert.Matches(@"made, .* held in the hollow, .* lost", told);
        var litres = double.Parse(told.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(litres, popover.Bread.PieceMass.Grams * 0.20 * 1.67, popover.Bread.PieceMass.Grams * 0.35 * 1.75);
    }

    /// <summary>The gas made is told with one range, in the chart and in the table of its sources.</summary>
    [Fact]
    public void The_gas_made_has_one_range()
    {
        foreach (var bread in Pack.Comparison.Where(bread => bread.Bread.Formula.Leavening != Leavening.Steam))
        {
            var title = bread.Bread.Formula.Title;
            var bar = BuiltPack
                .Demo["comparison.html"]
                .QuerySelectorAll(".bars li")
                .Single(bar => bar.QuerySelector(".bar-label")!.Words() == title)
                .QuerySelector("desc")!
                .Words();
            var group = BuiltPack
                .Demo["comparison.html"]
                .QuerySelectorAll("tbody")
                .Single(body => body.QuerySelector(".group")?.Words().StartsWith(title + " one ", StringComparison.Ordinal) == true);
            Assert.EndsWith(
                "; made "
                    + group
                        .QuerySelectorAll("tr")
                        .Single(row => row.QuerySelector("th")!.Words() == "Together, steam apart")
                        .Children[2]
                        .Words(),
                bar,
                StringComparison.Ordinal
            );
        }
    }

    /// <summary>
    /// The hollow that the exercise asks for and the hollow that the pack forecasts are of one popover: both ends of the one lie within the
    /// other.
    /// </summary>
    [Fact]
    public void The_hollow_of_the_exercise_is_one_that_the_pack_forecasts()
    {
        var exercise = Pack.Lesson.Exercises.Single(exercise => exercise.Id == "steam");
        var (cavity, batter) = (
            exercise.Givens.Single(given => given.Id == "cavity"),
            exercise.Givens.Single(given => given.Id == "batter")
        );
        var popover = Pack.Comparison.Single(bread => bread.Bread.Formula.Leavening == Leavening.Steam);
        Assert.Equal(popover.Bread.PieceMass.Grams, (double)(batter.From + batter.To) / 2, 1e-9);
        Assert.InRange(
            (double)cavity.From,
            popover.PerPiece.SteamFate.Held.Low.Millilitres,
            popover.PerPiece.SteamFate.Held.High.Millilitres
        );
        Assert.InRange(
            (double)cavity.To,
            popover.PerPiece.SteamFate.Held.Low.Millilitres,
            popover.PerPiece.SteamFate.Held.High.Millilitres
        );
    }

    /// <summary>The powder of a creamed cake works from where milk meets it, not from the weighing; its air is creamed in before.</summary>
    [Fact]
    public void The_gas_of_a_cake_is_counted_from_where_the_powder_is_wetted()
    {
        var cakes = BuiltPack
            .Mountain["comparison.html"]
            .QuerySelectorAll("tbody")
            .Single(body => body.QuerySelector(".group")?.Words() == "Butter cakes");
        Assert.Equal("Fill", cakes.QuerySelectorAll("tr").ElementAt(1).QuerySelector("th")!.Words());
    }

    private static string Figure(string file, string label) =>
        BuiltPack
            .Demo[file]
            .QuerySelectorAll(".bars li")
            .Single(bar => bar.QuerySelector(".bar-label")!.Words() == label)
            .QuerySelector(".bar-figure b")!
            .Words();

    /// <summary>A cell of the first table after a heading that has the row.</summary>
    private static string Row(string heading, string begins, string title)
    {
        var below = BuiltPack.Demo["comparison.html"].QuerySelector(heading)!;
        var tables = below
            .ParentElement!.QuerySelectorAll("table")
            .Where(table => below.CompareDocumentPosition(table).HasFlag(DocumentPositions.Following));
        var found = tables.First(table =>
            table.QuerySelectorAll("tbody th").Any(head => head.Words().StartsWith(begins, StringComparison.Ordinal))
        );
        var column = found.QuerySelectorAll("thead th").Select(head => head.Words()).ToList().IndexOf(title);
        return found
            .QuerySelectorAll("tbody tr")
            .First(row => row.QuerySelector("th")!.Words().StartsWith(begins, StringComparison.Ordinal))
            .Children[column]
            .Words();
    }
}
