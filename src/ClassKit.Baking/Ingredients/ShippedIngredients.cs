namespace ClassKit.Baking.Ingredients;

/// <summary>The file of ingredients that ships, inside this assembly: <c>ingredients.csv</c> beside this of the checkout.</summary>
internal static class ShippedIngredients
{
    private const string Name = "ingredients.csv";

    /// <summary>Every row as an ingredient.</summary>
    /// <exception cref="InvalidDataException">A row is wrong: a mistake of ours, which tests find.</exception>
    public static List<Ingredient> Read()
    {
        using var reader = new StreamReader(typeof(ShippedIngredients).Assembly.GetManifestResourceStream(Name)!);
        var ingredients = new List<Ingredient>();
        Dictionary<string, int>? places = null;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '#')
                continue;
            var fields = Fields(line);
            if (places is null)
            {
                places = fields.Index().ToDictionary(field => field.Item, field => field.Index, StringComparer.Ordinal);
                continue;
            }
            var head = places;
            var (ingredient, faults) = IngredientRow.Read(column =>
                head.TryGetValue(column, out var place) && place < fields.Count ? fields[place] : ""
            );
            ingredients.Add(ingredient ?? throw new InvalidDataException($"{fields[0]}: {faults[0]}"));
        }
        return ingredients;
    }

    /// <summary>RFC 4180, without line ends in a field, which this file has none of.</summary>
    private static List<string> Fields(string line)
    {
        var fields = new List<string>();
        var at = 0;
        while (at <= line.Length)
        {
            if (at < line.Length && line[at] == '"')
            {
                var end = at + 1;
                while (line[end] != '"' || (end + 1 < line.Length && line[end + 1] == '"'))
                    end += line[end] == '"' ? 2 : 1;
                fields.Add(line[(at + 1)..end].Replace("\"\"", "\"", StringComparison.Ordinal));
                at = end + 2;
            }
            else
            {
                var end = line.IndexOf(',', at) is >= 0 and var comma ? comma : line.Length;
                fields.Add(line[at..end]);
                at = end + 1;
            }
        }
        return fields;
    }
}
