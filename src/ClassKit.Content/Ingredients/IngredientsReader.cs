using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Ingredients;

/// <summary>
/// Reads a file of ingredients: a table with the columns of <see cref="IngredientColumn"/>, any of which but name, kind, water and source
/// may be left out.
/// </summary>
public static class IngredientsReader
{
    /// <summary>What such a file is called: it is found by its name, in the folder of what uses it or above.</summary>
    public static IReadOnlyList<string> FileNames { get; } = ["ingredients.csv", "ingredients.xlsx", "ingredients.ods"];

    /// <summary>The ingredients, or everything that is wrong with the file.</summary>
    public static Reading<OwnPantry> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<OwnPantry> ReadFile(Source source)
    {
        var problems = new ProblemList(source.Shown);
        if (SheetTables.Read(source, problems) is not [{ Records: [var header, ..] records }, ..] || !problems.IsEmpty)
            return Empty(problems);
        List<string> known = [.. IngredientColumn.All.Select(column => column.Name)];
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (
            var (at, title) in header.Fields.Select(field => field.Trim().ToLowerInvariant()).Index().Where(title => title.Item.Length > 0)
        )
        {
            if (!known.Contains(title))
                problems.Add(header.Line, $"The header has a column `{title}`, which is not known here", NearestWord.Advice(title, known));
            else if (!places.TryAdd(title, at))
                problems.Add(header.Line, $"The header has the column `{title}` twice", "Keep one of them.");
        }
        if (!problems.IsEmpty)
            return problems.Fail<OwnPantry>();

        var own = new List<Ingredient>();
        foreach (var record in records.Skip(1))
        {
            if (record.Fields.Skip(header.Fields.Count).Any(field => field.Trim().Length > 0))
            {
                problems.Add(
                    record.Line,
                    $"The row has {record.Fields.Count} cells, and the titles are {header.Fields.Count}",
                    "If its numbers have decimal commas, put `;` between all columns, those of the titles too; else put quotes around a cell that holds a comma."
                );
                continue;
            }
            var (ingredient, faults) = IngredientRow.Read(column =>
                places.TryGetValue(column, out var place) && place < record.Fields.Count ? record.Fields[place].Trim() : ""
            );
            foreach (var fault in faults)
                problems.Add(record.Line, Found(fault), Expected(fault));
            if (ingredient is null)
                continue;
            if (own.Exists(other => other.Id == ingredient.Id))
                problems.Add(
                    record.Line,
                    $"The ingredient `{ingredient.Id}` is listed a second time",
                    "Keep one row for it, or give one of them another id."
                );
            NoteKnown(ingredient, record.Line, problems);
            own.Add(ingredient);
        }
        return problems.Finish(() => new OwnPantry(own));
    }

    /// <summary>
    /// One's own figures in the place of those that ship are well meant; the same thing under another name is bought and declared twice.
    /// </summary>
    private static void NoteKnown(Ingredient own, int line, ProblemList problems)
    {
        if (Pantry.Shipped.TryFind(own.Id, out var shipped))
            problems.Doubt(
                line,
                $"`{own.Name}` takes the place of {shipped.Name}, which ships with figures of its own",
                "Take the row out if you did not mean to.",
                Weight.Fine
            );
        else if (Pantry.Shipped.Called(own.Name) is [var other])
            problems.Doubt(
                line,
                $"`{own.Name}` is another name of {other.Name}, which ClassKit knows, so that there are two of it now",
                $"Take the row out, or write `{other.Id}` in a column `id` to put your figures in the other's place."
            );
    }

    private static Reading<OwnPantry> Empty(ProblemList problems)
    {
        if (problems.IsEmpty)
            problems.Add(
                null,
                "There is no table in the file",
                $"Its first line names the columns: {string.Join(",", IngredientColumn.All.Select(column => column.Name))}."
            );
        return problems.Fail<OwnPantry>();
    }

    private static string Found(IngredientFault fault) =>
        fault.Kind switch
        {
            IngredientFaultKind.Missing => $"The column `{fault.Column}` is empty",
            IngredientFaultKind.TooMuch => "Water, protein, fat, carbohydrate and ash of 100 g come to more than 100 g",
            _ => $"The column `{fault.Column}` holds `{fault.Found}`",
        };

    private static string Expected(IngredientFault fault) =>
        fault.Kind switch
        {
            IngredientFaultKind.Missing =>
                $"It must be there: {Means(fault.Column).Replace("; must be there", "", StringComparison.Ordinal)}.",
            IngredientFaultKind.NoNumber => $"A number is expected: {Means(fault.Column)}.",
            IngredientFaultKind.NoShare => $"It must be from 0 to 100, and of several numbers the least first: {Means(fault.Column)}.",
            IngredientFaultKind.TooMuch => "Look at the label or the table again; a column may be per portion.",
            IngredientFaultKind.NoWeight => $"It must be above 0: {Means(fault.Column)}.",
            IngredientFaultKind.UnknownKind => NearestWord.Advice(fault.Found, [.. IngredientRow.KindNames]),
            IngredientFaultKind.UnknownGas => fault.Column == "gives"
                ? NearestWord.Advice(fault.Found, [.. IngredientRow.GasNames])
                : $"Say in the column `gives` what makes that gas: {Means("gives")}.",
            IngredientFaultKind.UnknownAllergen => AllergenAdvice.For(fault.Found),
            IngredientFaultKind.NoAnswer => $"Write `yes` or `no`: {Means(fault.Column)}.",
            IngredientFaultKind.NoId => "Use small letters a to z, digits and _.",
        };

    private static string Means(string column) => IngredientColumn.All.First(known => known.Name == column).Means;
}
