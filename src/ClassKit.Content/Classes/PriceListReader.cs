using ClassKit.Baking.Costing;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Ingredients;
using ClassKit.Content.Lessons;
using ClassKit.Content.Outline;
using ClassKit.Content.Sources;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Content.Classes;

/// <summary>Reads a price list: a table of how each ingredient is sold, and what a pack costs.</summary>
public static class PriceListReader
{
    private static readonly string[] Columns = ["Ingredient", "Pack", "Holds", "Price"];

    /// <summary>The list, or everything that is wrong with its file.</summary>
    public static Reading<PriceList> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<PriceList> ReadFile(Source source)
    {
        var problems = OwnIngredients.ProblemsOf(source);
        if (SourceFile.Read(source, problems) is not { } text || FrontMatterBlock.Split(text, problems) is not { } block)
            return problems.Fail<PriceList>();
        var fields = FrontMatterReader.Read(block.Yaml, problems);
        var currency = fields.Text("currency");
        fields.Finish();

        if (Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<PriceList>();
        var sections = new Sections(document.Sections, "##", problems);
        var packs = new Dictionary<string, PurchaseUnit>(StringComparer.Ordinal);
        foreach (var row in Tables.Rows(sections.Required("Prices"), Columns, problems))
            Add(row, packs, currency?.Text, problems);
        sections.Finish();
        return problems.Finish(() => new PriceList(document.Title.Text, currency!.Value.Text, packs));
    }

    private static void Add(TableRow row, Dictionary<string, PurchaseUnit> packs, string? currency, ProblemList problems)
    {
        var ingredient = row.Required("Ingredient", problems) is { } name ? KnownIngredient.Find(name, problems) : null;
        var pack = row.Required("Pack", problems);
        var holds = row.Required("Holds", problems);
        var price = row.Required("Price", problems) is { } amount ? PriceCell.Read(amount, currency, problems) : null;
        if (
            ingredient is null
            || pack is null
            || holds is null
            || price is null
            || PackContent.Read(holds.Value, ingredient, problems) is not { } mass
        )
            return;
        var unit = new PurchaseUnit($"{pack.Value.Text} of {holds.Value.Text}", mass, new(price.Value));
        if (unit.PricePerKilogram.Why is { } why)
            problems.Add(row.Line, why.Message.TrimEnd('.'), why.Remedy);
        else if (price == 0 && !TapWater.Is(ingredient))
            problems.Doubt(
                row.Line,
                $"A pack of {ingredient.Name} costs nothing",
                "Write what it costs, or keep the 0 if it is given to you."
            );
        if (unit.PricePerKilogram.Why is null && !packs.TryAdd(ingredient.Id, unit))
            problems.Add(row.Line, $"`{ingredient.Name}` is listed a second time", "Keep the pack that you buy.");
    }
}
