using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Lessons;

/// <summary>Reads the files that a lesson links to, and gathers what is wrong with any of them.</summary>
internal sealed class LinkedFiles(Source file, ProblemList lesson)
{
    private readonly List<Diagnostic> _problems = [];

    public IReadOnlyList<Diagnostic> Problems => _problems;

    /// <summary>One model for each link, in order; fewer if any could not be read.</summary>
    public IReadOnlyList<T> All<T>(IReadOnlyList<(Located Title, string Path)> links, ContentKind kind, Func<Source, Reading<T>> read, Func<T, string> title)
        where T : class
    {
        var models = new List<T>();
        foreach (var (words, path) in links)
        {
            if (One(words, path, kind, read) is not { } model)
                continue;
            if (title(model) != words.Text)
                lesson.Add(words.Line, $"The link reads `{words.Text}`, but the file's title is `{title(model)}`", "Use the file's title.");
            models.Add(model);
        }
        return models;
    }

    /// <summary>The model that a path in the front matter leads to.</summary>
    public T? One<T>(Located? path, ContentKind kind, Func<Source, Reading<T>> read)
        where T : class => path is { } there ? One(there, ContentPath.Beside(lesson.File, there.Text), kind, read) : null;

    private T? One<T>(Located link, string path, ContentKind kind, Func<Source, Reading<T>> read)
        where T : class
    {
        var linked = file.At(path);
        if (!linked.IsFile)
        {
            lesson.Add(link.Line, $"There is no file `{path}`", Nearby.Files(linked) ?? "Check the spelling; paths begin at the file that holds them.");
            return null;
        }
        // A file that is plainly of another kind would be told all that it lacks; this lesson itself would lead in a circle.
        var found = Path.GetExtension(path) == ".md" ? ContentRecognition.Of(linked) ?? kind : (ContentKind?)null;
        if (found != kind)
        {
            lesson.Add(link.Line, $"`{path}` is {(found is { } other ? ContentWords.Of(other) : "no Markdown file")}", $"Link to {ContentWords.Of(kind)}, a file that ends in .md.");
            return null;
        }
        var reading = read(linked);
        _problems.AddRange(reading.Problems);
        return reading.Model;
    }
}
