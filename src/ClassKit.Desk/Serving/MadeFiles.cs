using ClassKit.UseCases.Output;

namespace ClassKit.Desk.Serving;

/// <summary>Files of a use case's result that are shown or given out without being written: each is made when it is asked for.</summary>
internal static class MadeFiles
{
    /// <summary>Answers with one of them; pages are shown, anything else is to keep.</summary>
    public static Task Answer(Visit visit, IEnumerable<OutputFile> files, string? asked) =>
        files.FirstOrDefault(file => file.Path == asked) switch
        {
            null => visit.Nothing(),
            var found when found.Path.EndsWith(".html", StringComparison.Ordinal) => visit.ShowSheet(
                System.Text.Encoding.UTF8.GetString(found.Content)
            ),
            var found => Keep(visit, found),
        };

    /// <summary>Answers with one of them, to keep.</summary>
    public static Task Keep(Visit visit, OutputFile file) =>
        visit.Download(Path.GetFileName(file.Path), "application/octet-stream", file.Content);
}
