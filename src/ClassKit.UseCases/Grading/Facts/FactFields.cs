using System.Text.Json.Nodes;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>What fields of facts are written as; <see cref="FactReader"/> reads them.</summary>
internal static class FactFields
{
    /// <summary>Dividing by a one with all its decimals leaves as few as the number needs.</summary>
    private const decimal One = 1.0000000000000000000000000000m;

    public static JsonNode Of(decimal number) => number / One;

    public static JsonArray Of(IEnumerable<string> texts) => [.. texts.Select(text => (JsonNode)text)];

    public static JsonObject Of(IReadOnlyDictionary<string, string> texts) =>
        new([.. texts.Select(text => KeyValuePair.Create(text.Key, (JsonNode?)text.Value))]);

    public static JsonArray Of(IEnumerable<Part> parts) => Of(parts.Select(part => part.Id));

    public static JsonArray Of(IEnumerable<Student> students) => Of(students.Select(student => student.Id));

    public static JsonArray Of(IEnumerable<ReturnedName> files) => Of(files.Select(file => file.Path));

    public static JsonArray Of(IEnumerable<(string Exercise, string Part)> asked) =>
        Of(asked.Select(part => $"{part.Exercise}.{part.Part}"));

    public static JsonObject Of(SyntaxFound found) => new() { ["what"] = KindWords.Of(found.Kind), ["text"] = found.Text };

    public static JsonObject Of(CellAddress cell) => new() { ["sheet"] = cell.Sheet, ["cell"] = cell.Cell };

    public static JsonObject Of(CellPlace place) =>
        new()
        {
            ["sheet"] = place.Cell.Sheet,
            ["cell"] = place.Cell.Cell,
            ["ownSheet"] = place.IsOwnSheet,
        };
}
