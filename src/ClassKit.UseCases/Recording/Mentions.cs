using System.Text.Json.Nodes;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Erasing;

namespace ClassKit.UseCases.Recording;

/// <summary>Takes what names a student out of others' entries.</summary>
internal static class Mentions
{
    private const string Flags = "flags";

    /// <summary>
    /// A graded student's entry without the flags that name somebody; null for the entry of a file whose name or fate does.
    /// </summary>
    public static string? Without(string entry, Student student)
    {
        var document = PlainJson.Read(entry);
        var sought = new SoughtStudent(student, []);
        if (document[Flags] is not JsonArray flags)
            return Names(document, sought) ? null : entry;
        var naming = flags.Where(flag => Names(flag, sought)).ToList();
        if (naming.Count == 0)
            return entry;
        foreach (var flag in naming)
            flags.Remove(flag);
        return PlainJson.Write(document);
    }

    /// <summary>As a whole word: "ana-li" is part of "diana-li", who stays.</summary>
    private static bool Names(JsonNode? node, SoughtStudent sought) => NamedInJson.Any(node, sought.IsMeantBy);
}
