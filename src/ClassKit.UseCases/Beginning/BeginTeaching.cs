using ClassKit.Content.Sources;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Beginning;

/// <summary>
/// Makes files to begin with: each is sound as it is, and says in remarks of its own what may be changed and what for. They ship as
/// <c>starting</c>.
/// </summary>
public static class BeginTeaching
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "begin";

    private const string Root = "starting";
    private const string LessonFolder = Root + "/lessons/milk-scones";

    private static readonly string[] ClassFiles = ["class.md", "roster.csv", "prices.md", "ingredients.csv"];

    /// <summary>The files.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static IReadOnlyList<OutputFile> Run(BeginRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.ReadingContent);
        return request.Part switch
        {
            BeginPart.Folder => [.. Below(Root, "")],
            BeginPart.Lesson => [.. Below(LessonFolder, "")],
            BeginPart.Class => [.. ClassFiles.Select(name => File(Root, name))],
            BeginPart.Exercise => [File(LessonFolder + "/exercises", "how_wet.md")],
        };
    }

    /// <summary>
    /// What is written, only where nothing is yet: these files are for changing, and would replace what was made of them.
    /// </summary>
    public static Produced Write(IReadOnlyList<OutputFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return new(files, [], []) { Open = files.Count > 0 ? [files[0].Path] : [], Objection = NewFolder.Objection };
    }

    private static IEnumerable<OutputFile> Below(string folder, string path)
    {
        foreach (var name in Shipped.Tree.Files(folder))
            yield return File(folder, name, path);
        foreach (var file in Shipped.Tree.Folders(folder).SelectMany(name => Below($"{folder}/{name}", path + name + "/")))
            yield return file;
    }

    private static OutputFile File(string folder, string name, string path = "") => new(path + name, stream =>
        {
            using var shipped = Shipped.Tree.Open($"{folder}/{name}");
            shipped.CopyTo(stream);
        });
}
