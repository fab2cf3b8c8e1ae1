using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;
using ClassKit.Notes;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Handing;

/// <summary>
/// Makes one file of a lesson and of all that it leads to, for a colleague, a substitute or next year. See <see cref="ReceiveLesson"/>.
/// </summary>
/// <remarks>
/// What was read for the lesson is what it leads to. No class, no roster and nothing that came back is ever among it: a lesson leads to
/// none of these.
/// </remarks>
public static class HandOverLesson
{
    /// <summary>The kind of folder that its file goes into.</summary>
    public const string Kind = "hand-over";

    /// <summary>
    /// How far above the lesson what it leads to may lie: a lesson lies among lessons, and those in a teaching folder. What is further up
    /// is somebody else's.
    /// </summary>
    private const int Highest = 3;

    /// <summary>The bundle, or what is wrong with the lesson: one that cannot be read here cannot be read elsewhere.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<HandedOver> Run(HandOverRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.ReadingContent);
        // A library of its own: what it has read in the end is what belongs to the lesson.
        var library = new Library(request.Lesson.Library.Tree);
        var lesson = LessonReader.Read(library.At(request.Lesson.Path));
        var prices = request.Prices is { } list ? PriceListReader.Read(library.At(list.Path)) : null;
        if (!lesson.Succeeded || prices is { Succeeded: false })
            return new(null, [.. lesson.Problems, .. prices?.Problems ?? []]);

        var tree = library.Tree;
        var folder = Slashed(tree.Full(request.Lesson.Path));
        List<string> files = [.. library.Read.Select(Slashed).Where(file => !file.StartsWith(Shipped.Scheme, StringComparison.Ordinal))];
        var root = Common(files);
        if (Depth(folder) - Depth(root) > Highest)
            return new(
                null,
                [
                    new(
                        request.Lesson.Path,
                        null,
                        $"The lesson leads to files that lie far from it: below `{root}`",
                        "Bring them nearer: a bundle holds everything below one folder at most three above the lesson's."
                    ),
                ]
            );

        List<string> taken = [.. files.Select(Inside).Order(StringComparer.Ordinal)];
        return new(
            new(
                Path.GetFileName(folder) + ".zip",
                BundleBytes.Of(taken.Select(path => (path, Bytes(path))), Inside(folder), lesson.Model.Title),
                taken,
                [.. Beside().Except(taken).Order(StringComparer.Ordinal)]
            ),
            []
        );

        string Inside(string full) => root.Length == 0 ? full : full[(root.Length + 1)..];

        byte[] Bytes(string path)
        {
            using var stream = tree.Open(root.Length == 0 ? path : $"{root}/{path}");
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            return bytes.ToArray();
        }

        IEnumerable<string> Beside() =>
            files
                .Select(file => file[..Math.Max(0, file.LastIndexOf('/'))])
                .Append(folder)
                .Distinct()
                .SelectMany(place => tree.Files(place).Select(name => Inside(place.Length == 0 ? name : $"{place}/{name}")));
    }

    /// <summary>The bundle with what is in it and what is not.</summary>
    public static Produced Write(HandedOver bundle)
    {
        ArgumentNullException.ThrowIfNull(bundle);
        return new([new(bundle.Name, bundle.Bytes)], [new Note.HandedOver(bundle.Name, bundle.Taken, bundle.LeftOut)], [])
        {
            Open = [bundle.Name],
        };
    }

    private static string Slashed(string path) => path.Replace('\\', '/');

    private static int Depth(string path) => path.Length == 0 ? 0 : path.Count(letter => letter == '/') + 1;

    /// <summary>The folder that all files lie in or below; empty for that of the tree.</summary>
    private static string Common(List<string> files)
    {
        var steps = files.Select(file => file.Split('/')[..^1]).ToList();
        var shared = steps.Min(path => path.Length);
        while (steps.Exists(path => !path.AsSpan(0, shared).SequenceEqual(steps[0].AsSpan(0, shared))))
            shared--;
        return string.Join('/', steps[0].Take(shared));
    }
}
