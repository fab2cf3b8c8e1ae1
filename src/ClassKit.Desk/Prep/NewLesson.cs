using System.Text;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.UseCases.Beginning;
using ClassKit.UseCases.Handing;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Prep;

/// <summary>
/// One more lesson of the instructor's own, under a name of its own: the short one that a teaching folder begins with, or a copy of another.
/// </summary>
internal static class NewLesson
{
    private const string Lessons = "lessons";

    private const string Text = "lesson.md";

    /// <summary>What the short lesson leads to beside itself.</summary>
    private const string Rubrics = "rubrics/";

    /// <summary>What else it names, where the folder does not know it.</summary>
    private const string Ingredients = "ingredients.csv";

    /// <summary>Begins it.</summary>
    /// <param name="visit">Its form: what the lesson is called, and the key of the one that it is a copy of; empty for the short one.</param>
    /// <returns>The folder that it lies in, or why it could not be begun.</returns>
    public static Reading<string> Begin(Visit visit)
    {
        var (root, name) = (visit.Folder.Root, visit.Typed("name"));
        if (name.Length is 0 or > 120 || name.Any(char.IsControl))
            return No("name", "The lesson has no name, or a very long one", "Call it something like Rye in a tin.");
        var key = PlainKey.OfFile(name.ToLowerInvariant()).Trim('.', '-');
        var folder = Path.Combine(root, Lessons, key);
        if (
            key.Length == 0
            || Path.Exists(folder)
            || visit.Folder.Lessons().Any(lesson => lesson.Title.Equals(name, StringComparison.OrdinalIgnoreCase))
        )
            return No("name", $"There is a lesson or a folder called `{name}` already", "Give this lesson another name.");
        var like = visit.Typed("like");
        if (like.Length > 0 && visit.Folder.Lesson(like) is null)
            return No("like", "The lesson that it was to be a copy of is no longer there", "Choose another.");
        try
        {
            // Put together beside its place, so that nothing half begun is ever taken for a lesson.
            var begun = Path.Combine(root, Lessons, FreeName.In(Path.Combine(root, Lessons), number => $".begun-{number}"));
            try
            {
                if (visit.Folder.Lesson(like) is { } other)
                    Copy(other, begun, root);
                else
                    Short(begun, root);
                var text = Path.Combine(begun, Text);
                WholeFile.Write(text, Encoding.UTF8.GetBytes(TextHeading.With(File.ReadAllText(text).ReplaceLineEndings("\n"), name)));
                Directory.Move(begun, folder);
            }
            finally
            {
                if (Directory.Exists(begun))
                    Directory.Delete(begun, recursive: true);
            }
            return new(folder, []);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return No(
                folder,
                $"The lesson could not be begun: {failure.Message}",
                "Check that there is room and that you may write there."
            );
        }
    }

    private static Reading<string> No(string field, string found, string remedy) => new(null, [new(field, null, found, remedy)]);

    private static void Short(string folder, string root)
    {
        foreach (var file in BeginTeaching.Run(new(BeginPart.Lesson), Run.Unwatched))
            Put(Path.Combine(folder, file.Path), file.WriteTo);
        var beside = BeginTeaching.Run(new(BeginPart.Folder), Run.Unwatched);
        foreach (var file in beside.Where(file => file.Path.StartsWith(Rubrics, StringComparison.Ordinal)))
            Put(Path.Combine(root, file.Path), file.WriteTo);
        if (!LessonReader.Read(folder).Succeeded)
            Put(Path.Combine(folder, Ingredients), beside.Single(file => file.Path == Ingredients).WriteTo);
    }

    /// <summary>All that lies in the other's folder; of one that ships, what it leads to elsewhere as well.</summary>
    private static void Copy(LessonEntry other, string folder, string root)
    {
        if (!other.IsShipped)
        {
            foreach (var file in Directory.EnumerateFiles(other.Path, "*", SearchOption.AllDirectories))
                Put(Path.Combine(folder, Path.GetRelativePath(other.Path, file)), stream =>
                {
                    using var from = File.OpenRead(file);
                    from.CopyTo(stream);
                });
            return;
        }
        var place = other.Path[Shipped.Scheme.Length..].TrimStart('/');
        var bundle = HandOverLesson.Run(new(new Library(Shipped.Tree).At(place)), Run.Unwatched);
        foreach (var path in bundle.Model?.Taken ?? throw new IOException(bundle.Problems[0].Found))
            Put(
                path.StartsWith(place + "/", StringComparison.Ordinal)
                    ? Path.Combine(folder, path[(place.Length + 1)..])
                    : Path.Combine(root, path),
                stream =>
                {
                    using var from = Shipped.Tree.Open(path);
                    from.CopyTo(stream);
                }
            );
    }

    private static void Put(string file, Action<Stream> write)
    {
        if (File.Exists(file))
            return;
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        using var stream = new FileStream(file, FileMode.CreateNew);
        write(stream);
    }
}
