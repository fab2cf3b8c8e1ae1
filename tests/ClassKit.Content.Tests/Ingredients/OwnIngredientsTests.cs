using ClassKit.Content.Checking;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Ingredients;
using ClassKit.Content.Lessons;

namespace ClassKit.Content.Tests.Ingredients;

/// <summary>A kitchen's or lesson's own ingredients, by where their file lies.</summary>
public sealed class OwnIngredientsTests : IDisposable
{
    private const string Emmer = "# Emmer of the mill next door\nname,kind,water,allergens,source\nEmmer flour,flour,12,emmer,its label\n";

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private string Formula(string ingredient, string name = "lesson")
    {
        var folder = _folder.Copy(Path.Combine(Repository.Root, "lessons", "one-tin-three-lifts"), name);
        var file = Path.Combine(folder, "formulas", "popovers.md");
        File.WriteAllText(file, File.ReadAllText(file).Replace("All-purpose flour", ingredient, StringComparison.Ordinal));
        return file;
    }

    [Theory]
    [InlineData("ingredients.csv")]
    [InlineData("lesson/ingredients.csv")]
    [InlineData("lesson/formulas/ingredients.csv")]
    public void A_formula_names_what_stands_in_a_file_beside_or_above_it(string place)
    {
        var file = Formula("Emmer flour");
        _folder.Write(place, Emmer);

        var formula = LessonFormulaReader.Read(file);

        Assert.Empty(formula.Problems);
        Assert.Equal(
            ("emmer_flour", 0.12),
            (formula.Model!.Formula.Lines[0].Ingredient.Id, formula.Model.Formula.Lines[0].Ingredient.WaterShare)
        );
    }

    [Fact]
    public void A_row_with_an_id_that_ships_replaces_it()
    {
        _folder.Write("lesson/ingredients.csv", "id;name;kind;water;source\nap_flour;Mill flour;flour;15,5;measured\n");

        Assert.Equal(0.155, LessonFormulaReader.Read(Formula("Mill flour")).Model!.Formula.Lines[0].Ingredient.WaterShare, 1e-12);
    }

    [Fact]
    public void A_whole_lesson_and_a_price_list_know_them_too()
    {
        Formula("Emmer flour", Path.Combine("lessons", "lesson"));
        _folder.Copy(Path.Combine(Repository.Root, "rubrics"), "rubrics");
        _folder.Write("ingredients.csv", Emmer);

        Assert.Empty(LessonReader.Read(Path.Combine(_folder.Path, "lessons", "lesson")).Problems);
        Assert.Equal(
            2m,
            PriceListReader
                .Read(
                    _folder.Write(
                        "prices.md",
                        "---\ncurrency: EUR\n---\n\n# Prices\n\n## Prices\n\n| Ingredient | Pack | Holds | Price |\n|---|---|---|---|\n| Emmer flour | bag | 1 kg | 2,00 |\n"
                    )
                )
                .Model!.Packs["emmer_flour"]
                .Price.Amount
        );
    }

    [Theory]
    [InlineData("Rye sourdough", "Write a starter with its hydration")]
    [InlineData("Al-purpose flour", "Did you mean `All-purpose flour`")]
    [InlineData("Ry flour", "Did you mean `Rye flour`")]
    [InlineData("Emmer flour", "Add it as a row of your own to a file `ingredients.csv`")]
    [InlineData("Fairy dust", "Add it as a row of your own to a file `ingredients.csv`")]
    [InlineData("yogurt", "Say which: Plain whole-milk yogurt")]
    public void What_is_not_known_is_offered_sensibly_or_not_at_all(string typed, string advice)
    {
        var problem = LessonFormulaReader.Read(Formula(typed)).Problems[0];

        Assert.Contains($"`{typed}`", problem.Found, StringComparison.Ordinal);
        Assert.Contains(advice, problem.Expected, StringComparison.Ordinal);
        Assert.DoesNotContain("Cake flour", problem.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("name,kind,water,source\nEmmer,flour,,label\n", 2, "The column `water` is empty", "It must be there: g in 100 g")]
    [InlineData("name,kind,water,source\nEmmer,grain,12,label\n", 2, "The column `kind` holds `grain`", "Known here: flour, liquid")]
    [InlineData("name,kind,watr,source\nEmmer,flour,12,label\n", 1, "The header has a column `watr`", "Did you mean `water`?")]
    [InlineData(
        "name,kind,water,allergens,source\nEmmer,flour,12,weat,label\n",
        2,
        "The column `allergens` holds `weat`",
        "Did you mean `wheat`?"
    )]
    [InlineData(
        "name,kind,water,source\nEmmer,flour,12,label\nEmmer,flour,13,label\n",
        3,
        "`emmer` is listed a second time",
        "Keep one row"
    )]
    [InlineData("", null, "There is no table in the file", "Its first line names the columns: id,name")]
    public void A_mistake_is_shown_with_its_line_and_the_way_out(string text, int? line, string found, string remedy) =>
        Complaint.Only(IngredientsReader.Read(_folder.Write("ingredients.csv", text)), line, found, remedy);

    [Fact]
    public void A_broken_file_stops_what_it_is_for_and_is_checked_by_itself()
    {
        var file = Formula("Emmer flour");
        _folder.Write("lesson/ingredients.csv", "name,kind,water\nEmmer flour,flour,12\n");

        Assert.Contains(LessonFormulaReader.Read(file).Problems, IsTheFaultOfTheTable);
        Assert.Single(ContentChecker.Check([_folder.Path]).Problems, IsTheFaultOfTheTable);

        static bool IsTheFaultOfTheTable(Diagnostic problem) =>
            problem.File.EndsWith("ingredients.csv", StringComparison.Ordinal) && problem.Found == "The column `source` is empty";
    }
}
