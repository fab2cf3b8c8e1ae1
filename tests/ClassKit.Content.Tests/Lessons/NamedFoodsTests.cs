using ClassKit.Content.Lessons;

namespace ClassKit.Content.Tests.Lessons;

/// <summary>Foreign methods, as instructors write them: what is named and not listed is found, and nothing else.</summary>
public sealed class NamedFoodsTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    private readonly string _shipped = File.ReadAllText(Path.Combine(Repository.Lesson, "formulas/popovers.md")).ReplaceLineEndings("\n");

    public void Dispose() => _folder.Dispose();

    public static TheoryData<string, string, string, string> Methods =>
        new()
        {
            // title; formula; greasing and dusting; method → what is complained of, behind the arrow
            {
                "Scones",
                "All-purpose flour 100, Whole milk 60, Unsalted butter 20, Granulated sugar 10, Baking powder, double-acting 5",
                "",
                "Rub the butter into the flour until it is like crumbs the size of a pea. Stir in sugar and baking powder. Pour in the milk. Turn out onto a floured board and pat. Brush the tops with milk. → floured; milk"
            },
            {
                "Scones",
                "All-purpose flour 100, Whole milk 60, Unsalted butter 20",
                "All-purpose flour 10 g a batch, Whole milk 10 g a batch",
                "Rub the butter in. Pour in the milk. Turn out onto a floured board and pat. Brush the tops with milk. →"
            },
            {
                "Soda bread",
                "All-purpose flour 100, Buttermilk 70, Baking soda 1, Fine salt 2",
                "",
                "Sift the flour with the soda and salt. Pour in the buttermilk; the batter for soda bread is soft. Fill a bowl with hot water beside the oven. →"
            },
            {
                "Milk rolls",
                "Bread flour 100, Water 40, Instant yeast 1, Fine salt 2",
                "",
                "Dissolve the yeast in water, add flour and salt and knead. Milk rolls take a second rise. →"
            },
            {
                "Buns",
                "Dark rye flour 60, Bread flour 40, Water 60, Apricot jam 10, Dried apricots 8",
                "",
                "Scald a third of the rye flour. Stir in jam and apricots. →"
            },
            { "Cream scones", "All-purpose flour 100, Water 60", "", "Stir flour and heavy cream together. → heavy cream" },
            {
                "Butter cake",
                "Cake flour 100, Granulated sugar 100, Unsalted butter 50, Whole egg 50",
                "Unsalted butter 5 g a batch, All-purpose flour 5 g a batch",
                "Butter the tins and flour the tins. Cream butter and sugar until pale. Add the yolks, then whisk the egg whites and fold them in. Line with greaseproof paper. →"
            },
            {
                "Butter cake",
                "Cake flour 100, Granulated sugar 100, Unsalted butter 50, Whole egg 50",
                "",
                "Butter the tins and dust them with flour. Cream butter and sugar until pale. → butter; dust; flour"
            },
            {
                "Challah",
                "Bread flour 100, Water 40, Whole egg 20, Vegetable oil (canola) 8, Granulated sugar 8, Instant yeast 1",
                "",
                "Mix all to a dough with oil, egg, sugar and yeast. Plait. Egg-wash twice and sprinkle with sesame seeds. → egg-wash; sesame seed"
            },
            {
                "Challah",
                "Bread flour 100, Water 40, Whole egg 20, Vegetable oil (canola) 8, Granulated sugar 8, Instant yeast 1",
                "Whole egg 20 g a batch, Sesame seeds 10 g a batch",
                "Mix all to a dough with oil, egg, sugar and yeast. Plait. Egg-wash twice and sprinkle with sesame seeds. →"
            },
            {
                "Pizza",
                "Bread flour 100, Water 65, Fine salt 2, Instant yeast 0.5",
                "Semolina 10 g a batch",
                "Stretch on a board dusted with semolina. Scatter with grated cheese. → cheese"
            },
            {
                "Banana muffins",
                "All-purpose flour 100, Whole egg 40, Vegetable oil (canola) 40, Granulated sugar 60, Baking soda 1",
                "",
                "Oil the muffin tin. Whisk eggs, oil and sugar. Sift in flour and soda. Chop the walnuts to the size of a pea and fold them in with melted chocolate. → oil; walnut; chocolate"
            },
            {
                "Oat loaf",
                "Bread flour 100, Water 65, Oats 10, Instant yeast 1",
                "",
                "Soak the oats in hot water. Knead to a nut-brown dough with the flour and yeast. Use an egg timer; slide the loaf out with a fish slice. Brush off the flour. →"
            },
            {
                "Vegan buns",
                "Bread flour 100, Water 60, Instant yeast 1",
                "",
                "Stir the flour into almond milk, or oat milk, or coconut milk. → almond milk; oat milk; coconut milk"
            },
            {
                "Crumble rolls",
                "Bread flour 100, Water 60, Instant yeast 1, Granulated sugar 10",
                "Granulated sugar 5 g a batch",
                "Bake until brown; sugar goes on top while they are hot. Not like brown sugar. Work with oat, milk being dear, or (cream) cheese. → brown sugar; oat; milk; cheese"
            },
            {
                // Almond extract may be made of almonds, custard powder hold milk or egg: common practice, no source.
                "Fancy buns",
                "Bread flour 100, Water 60, Instant yeast 1",
                "",
                "Stir in a teaspoon of almond extract and the custard powder. Fill with tofu, miso, pesto sauce from the jar, crackers and couscous. Bake until caramel brown. → almond extract; custard powder; tofu; miso; cracker; couscous"
            },
            {
                "Satay bread",
                "Bread flour 100, Water 60, Instant yeast 1",
                "",
                "Spread the dough with peanut butter, not with cocoa butter. → peanut butter; cocoa butter"
            },
        };

    [Theory, MemberData(nameof(Methods))]
    public void What_a_method_names_and_no_list_has_is_found(string title, string formula, string surfaces, string method)
    {
        var (steps, missing) = (
            method.Split('→')[0].Trim(),
            method.Split('→')[1].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        );
        var text = Of(title, formula, surfaces, steps);

        var problems = LessonFormulaReader.Read(_folder.Write("bread.md", text)).Problems;

        Assert.Equal(missing, problems.Select(problem => problem.Found.Split('`')[1].ToLowerInvariant()));
        Assert.All(problems, problem => Assert.Equal(Complaint.LineOf(text, "2. **Mix**"), problem.Line));
    }

    /// <summary>What a method may make itself is asked about and stops nobody; bought ready it would be in no list.</summary>
    [Theory]
    [InlineData("custard")]
    [InlineData("caramel")]
    [InlineData("pesto")]
    public void What_a_method_may_have_made_is_asked_about(string food)
    {
        var reading = LessonFormulaReader.Read(
            _folder.Write(
                "bread.md",
                Of("Buns", "Bread flour 100, Water 60, Instant yeast 1", "", $"Knead flour and yeast. Fill with the {food}.")
            )
        );

        Assert.Empty(reading.Problems);
        Assert.Contains(reading.Doubts, doubt => doubt.Found.Contains($"`{food}` is named here", StringComparison.Ordinal));
    }

    [Fact]
    public void The_shipped_lessons_name_nothing_that_they_do_not_list()
    {
        foreach (
            var lesson in Directory
                .EnumerateDirectories(Path.Combine(Repository.Lesson, ".."))
                .Where(folder => File.Exists(Path.Combine(folder, LessonReader.FileName)))
        )
            Assert.Empty(LessonReader.Read(lesson).Problems);
    }

    [Fact]
    public void Everything_that_a_shipped_method_greases_or_flours_is_listed()
    {
        // By hand: every shipped bread but the cakes in paper cups
        foreach (
            var lesson in Directory
                .EnumerateDirectories(Path.Combine(Repository.Lesson, ".."))
                .Where(folder => File.Exists(Path.Combine(folder, LessonReader.FileName)))
        )
            Assert.All(LessonReader.Read(lesson).Model!.Formulas, formula =>
                Assert.Equal(formula.Formula.Id == "butter_cakes", formula.Surfaces.Count == 0)
            );
    }

    /// <summary>The popovers' file with another title, formula and method; the rest of it does not matter.</summary>
    private string Of(string title, string formula, string surfaces, string method)
    {
        var text = _shipped
            .Replace("# Popovers", $"# {title}", StringComparison.Ordinal)
            .Replace("mix temperature: 24 °C\n", "", StringComparison.Ordinal);
        var rest = text[text.IndexOf("## Equipment", StringComparison.Ordinal)..];
        var rows = string.Join(
            '\n',
            System
                .Text.RegularExpressions.Regex.Matches(formula, @"(?<name>\S.*?) (?<percent>[0-9.]+)(, |$)")
                .Select(row => $"| {row.Groups["name"].Value} | {row.Groups["percent"].Value} |")
        );
        var touching =
            surfaces.Length == 0
                ? ""
                : "## Greasing and dusting\n\n| Ingredient | Amount | For |\n|---|---|---|\n"
                    + string.Join(
                        '\n',
                        System
                            .Text.RegularExpressions.Regex.Matches(surfaces, @"(?<name>\S.*?) (?<amount>[0-9]+ g a batch)(, |$)")
                            .Select(row => $"| {row.Groups["name"].Value} | {row.Groups["amount"].Value} | it |")
                    )
                    + "\n\n";
        return $"{text[..text.IndexOf("## Formula", StringComparison.Ordinal)]}## Formula\n\n| Ingredient | % |\n|---|---|\n{rows}\n\n{touching}## Method\n\n1. **Weigh** (5 min, scale, small scale). Everything.\n2. **Mix** (5 min). {method}\n3. **Bake** (20 min, oven 200 °C). Until brown.\n\n{rest}";
    }
}
