using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Lessons;

/// <summary>Reads the files that a lesson links to, and gathers what is wrong with any of them.</summary>
internal sealed class LinkedFiles(Source file, ProblemList lesson)
{
    private readonly List<Diagnostic> _problems = [];
    private readonly List<Diagnostic> _doubts = [];

    public IReadOnlyList<Diagnostic> Problems => _problems;

    /// <summary>A model read here, with what is doubtful in the files; none where one of them is wrong.</summary>
    public Reading<TModel> With<TModel>(Reading<TModel> reading)
        where TModel : class =>
        new(_problems.Count == 0 ? reading.Model : null, [.. reading.Problems, .. _problems]) { Doubts = [.. reading.Doubts, .. _doubts] };

    /// <summary>One model for each link, in order; fewer if any could not be read.</summary>
    public IReadOnlyList<T> All<T>(
        IReadOnlyList<(Located Title, string Path)> links,
        ContentKind kind,
        Func<Source, Reading<T>> read,
        Func<T, string> title
    )
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

    /// <summary>The model of a table that a path in the front matter leads to, whatever program saved it.</summary>
    public T? Table<T>(Located? path, Func<Source, Reading<T>> read)
        where T : class
    {
        if (path is not { } there)
            return null;
        var linked = file.At(ContentPath.Beside(lesson.File, there.Text));
        file.Library.Link(linked.Path);
        if (linked.IsFile)
            return Gathered(read(linked));
        lesson.Add(
            there.Line,
            $"There is no file `{linked.Path}`",
            Nearby.Files(linked) ?? "Check the spelling; paths begin at the file that holds them."
        );
        return null;
    }

    private T? Gathered<T>(Reading<T> reading)
        where T : class
    {
        _problems.AddRange(reading.Problems);
        _doubts.AddRange(reading.Doubts);
        return reading.Model;
    }

    private static string Advice(Source missing, ContentKind kind)
    {
        if (Nearby.Files(missing) is { } near)
            return near;
        var folder = missing.Folder;
        var alike = folder.IsFolder
            ? folder
                .Library.Tree.Files(folder.Path)
                .Where(name => name.EndsWith(".md", StringComparison.Ordinal) && ContentRecognition.Plainly(folder.In(name)) == kind)
                .ToList()
            : [];
        return alike is [var only]
            ? $"`{only}` beside it is {ContentWords.Of(kind)}: write its name if you mean that one."
            : "Check the spelling; paths begin at the file that holds them.";
    }

    private T? One<T>(Located link, string path, ContentKind kind, Func<Source, Reading<T>> read)
        where T : class
    {
        var linked = file.At(path);
        file.Library.Link(path);
        if (!linked.IsFile)
        {
            lesson.Add(link.Line, $"There is no file `{path}`", Advice(linked, kind));
            return null;
        }
        // A file that is plainly of another kind would be told all that it lacks; this lesson itself would lead in a circle.
        var found = Path.GetExtension(path) == ".md" ? ContentRecognition.Plainly(linked) ?? kind : (ContentKind?)null;
        if (found != kind)
        {
            lesson.Add(
                link.Line,
                $"`{path}` is {(found is { } other ? ContentWords.Of(other) : "no Markdown file")}",
                $"Link to {ContentWords.Of(kind)}, a file that ends in .md."
            );
            return null;
        }
        return Gathered(read(linked));
    }
}
