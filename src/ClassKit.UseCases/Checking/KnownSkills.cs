using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;

namespace ClassKit.UseCases.Checking;

/// <summary>The skills of the practice bank: an exercise of another one gets no practice from it.</summary>
internal static class KnownSkills
{
    private const string Bank = "lessons/practice";
    private const string Key = "skill:";

    private static readonly Lazy<IReadOnlyList<string>> OfBank = new(() =>
        [
            .. Shipped
                .Tree.Folders(Bank)
                .Select(folder => $"{Bank}/{folder}")
                .Select(folder => Skill($"{folder}/{Shipped.Tree.Files(folder)[0]}"))
                .Order(StringComparer.Ordinal),
        ]
    );

    /// <summary>Said of an exercise whose skill the bank has not; null if it has.</summary>
    public static Diagnostic? Note(string path, Exercise exercise) =>
        OfBank.Value.Contains(exercise.Skill, StringComparer.OrdinalIgnoreCase)
            ? null
            : new(
                path,
                null,
                $"No exercise of the bank practises `{exercise.Skill}`, so that practice that follows it has only your own",
                $"Skills of the bank: {string.Join(", ", OfBank.Value)}."
            )
            {
                Weight = Weight.Noted,
            };

    private static string Skill(string path)
    {
        using var reader = new StreamReader(Shipped.Tree.Open(path));
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith(Key, StringComparison.Ordinal))
                return line[Key.Length..].Trim();
        }
        return "";
    }
}
