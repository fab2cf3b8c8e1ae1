using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Marks;

/// <summary>Puts a rubric that comes with the program into the folder, where it can be changed.</summary>
internal static class OwnRubric
{
    /// <summary>The rule for grades.</summary>
    public const string Rule = "term-grade.md";

    /// <summary>The criteria of work at the bench.</summary>
    public const string Bench = "bench-work.md";

    private const string Rubrics = "rubrics";

    /// <summary>Its path; what lies there already stays as it is.</summary>
    /// <exception cref="IOException">It cannot be put there.</exception>
    public static string Put(TeachingFolder folder, string name)
    {
        var to = Path.Combine(folder.Root, Rubrics, name);
        if (File.Exists(to))
            return to;
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        using var shipped = Shipped.Tree.Open($"{Rubrics}/{name}");
        using var content = new MemoryStream();
        shipped.CopyTo(content);
        WholeFile.Write(to, content.ToArray());
        return to;
    }
}
