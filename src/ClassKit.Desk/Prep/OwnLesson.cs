using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.UseCases.Handing;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Prep;

/// <summary>A lesson that comes with the program, put into the folder with all that it leads to, to be changed there.</summary>
internal static class OwnLesson
{
    /// <summary>Puts it there; what lies there already stays as it is.</summary>
    /// <returns>Why it could not be put there; empty if it was.</returns>
    public static IReadOnlyList<Diagnostic> Make(TeachingFolder folder, LessonEntry lesson)
    {
        var bundle = HandOverLesson.Run(
            new(new Library(Shipped.Tree).At(lesson.Path[Shipped.Scheme.Length..].TrimStart('/'))),
            Run.Unwatched
        );
        if (!bundle.Succeeded)
            return bundle.Problems;
        try
        {
            foreach (var path in bundle.Model.Taken)
            {
                var to = Path.Combine(folder.Root, path);
                if (File.Exists(to))
                    continue;
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                using var shipped = Shipped.Tree.Open(path);
                using var file = new FileStream(to, FileMode.CreateNew);
                shipped.CopyTo(file);
            }
            return [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return
            [
                new(
                    folder.Root,
                    null,
                    $"It could not be put into the folder: {failure.Message}",
                    "Check that there is room and that you may write there."
                ),
            ];
        }
    }
}
