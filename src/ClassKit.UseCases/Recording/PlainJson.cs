using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Unicode;

namespace ClassKit.UseCases.Recording;

/// <summary>JSON as the record keeps it: without room between, every number as it was written.</summary>
internal static class PlainJson
{
    private static readonly JsonSerializerOptions Style = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    public static JsonObject Read(string text) => JsonNode.Parse(text)!.AsObject();

    public static string Write(JsonNode node) => node.ToJsonString(Style);

    /// <summary>Takes a list out of a document.</summary>
    public static IReadOnlyList<JsonObject> Take(JsonObject document, string list)
    {
        var found = document[list]?.AsArray() ?? [];
        document.Remove(list);
        return [.. found.Select(entry => entry!.AsObject())];
    }

    /// <summary>Puts a list into a document.</summary>
    public static void Put(JsonObject document, string list, IEnumerable<string> entries) =>
        document[list] = new JsonArray([.. entries.Select(entry => JsonNode.Parse(entry))]);
}
