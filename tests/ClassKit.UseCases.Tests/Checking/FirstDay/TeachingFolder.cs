using System.Text;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Beginning;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>The folder that beginning makes, in memory, with what an instructor does to it.</summary>
internal sealed class TeachingFolder
{
    public const string Lesson = "lessons/milk-scones/lesson.md";
    public const string Formula = "lessons/milk-scones/formulas/milk_scones.md";
    public const string Wet = "lessons/milk-scones/exercises/how_wet.md";
    public const string Flour = "lessons/milk-scones/exercises/flour_for_the_class.md";

    private static readonly Lazy<IReadOnlyList<KeyValuePair<string, byte[]>>> Begun = new(() =>
        [.. BeginTeaching.Run(new(BeginPart.Folder), Run.Unwatched).Select(file => KeyValuePair.Create(file.Path, file.Content))]
    );

    private readonly Dictionary<string, byte[]> _files = new(Begun.Value, StringComparer.Ordinal);

    /// <summary>Reads the folder as it stands.</summary>
    public Library Library => new(ListedTree.InMemory(_files));

    /// <summary>What is told of the folder as it stands.</summary>
    /// <param name="provesExercises">False to leave out drawing exercises that are as they were.</param>
    public ContentProof Check(bool provesExercises = true) =>
        CheckContent.Run(new(Library, [""]) { ProvesExercises = provesExercises }, Run.Unwatched);

    /// <summary>Writes something else in place of what stands there once.</summary>
    public TeachingFolder Change(string file, string from, string to)
    {
        var text = Text(file);
        Assert.Equal(2, text.Split(from).Length);
        return Put(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    /// <summary>Writes a file.</summary>
    public TeachingFolder Put(string file, string text) => Put(file, Encoding.UTF8.GetBytes(text));

    /// <summary>Puts a file there.</summary>
    public TeachingFolder Put(string file, byte[] bytes)
    {
        _files[file] = bytes;
        return this;
    }

    /// <summary>Gives a file, or all below a folder, another name.</summary>
    public TeachingFolder Rename(string from, string to)
    {
        Copy(from, to);
        foreach (var file in Below(from))
            _files.Remove(file);
        return this;
    }

    /// <summary>Puts a file, or all below a folder, there a second time.</summary>
    public TeachingFolder Copy(string from, string to)
    {
        foreach (var file in Below(from))
            _files[to + file[from.Length..]] = _files[file];
        return this;
    }

    /// <summary>Takes a file away.</summary>
    public TeachingFolder Remove(string file)
    {
        Assert.True(_files.Remove(file));
        return this;
    }

    /// <summary>What a file holds.</summary>
    public string Text(string file) => Encoding.UTF8.GetString(_files[file]);

    private List<string> Below(string path) =>
        [.. _files.Keys.Where(file => file == path || file.StartsWith(path + "/", StringComparison.Ordinal))];
}
