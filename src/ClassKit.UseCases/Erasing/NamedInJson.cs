using System.Text.Json.Nodes;

namespace ClassKit.UseCases.Erasing;

/// <summary>Looks for a text among the values of a JSON document.</summary>
internal static class NamedInJson
{
    /// <summary>True if any text in it is meant.</summary>
    public static bool Any(JsonNode? node, Func<string, bool> isMeant) =>
        node switch
        {
            JsonObject named => named.Any(pair => Any(pair.Value, isMeant)),
            JsonArray list => list.Any(item => Any(item, isMeant)),
            JsonValue value when value.TryGetValue<string>(out var text) => isMeant(text),
            _ => false,
        };
}
