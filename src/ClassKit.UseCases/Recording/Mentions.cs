using System.Text.Json.Nodes;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Erasing;

namespace ClassKit.UseCases.Recording;

/// <summary>Takes what names a student out of others' entries.</summary>
internal static class Mentions
{
    private const string Flags = "flags";

    /// <summary>A graded student's entry without the flags that name somebody; null for the entry of a file whose name or fate does.</summary>
    public static string? Without(string entry, Student student)
    {
        var document = PlainJson.Read(entry);
        if (document[Flags] is not JsonArray flags) return Names(document, student) ? null : entry;
        var naming = flags.Where(flag => Names(flag, student)).ToList();
        if (naming.Count == 0) return entry;
        foreach (var flag in naming) flags.Remove(flag);
        return PlainJson.Write(document);
    }

    private static bool Names(JsonNode? node, Student student) =>
        NamedInJson.Any(node, text => text.Contains(student.Id, StringComparison.OrdinalIgnoreCase) || text.Contains(student.Name, StringComparison.OrdinalIgnoreCase));
}
