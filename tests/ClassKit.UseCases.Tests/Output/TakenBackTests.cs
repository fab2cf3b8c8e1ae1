using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>Where one file cannot be put in place, as when another program holds it open, all that was done is taken back.</summary>
public sealed class TakenBackTests : IDisposable
{
    private readonly OutputSample _sample = new();

    public void Dispose() => _sample.Dispose();

    [Fact]
    public void Every_rename_is_undone()
    {
        _sample.Write(new("a.txt", [1]), new("b.txt", [1]), new("gone.txt", [1]));
        File.WriteAllText(_sample.Path("b.txt"), "typed");
        var work = new WorkFolder(_sample.Out);
        work.Begin(OutputSample.Kind);
        var own = new OwnFiles(_sample.Out, OutputManifest.Read(_sample.Out), ignoresCase: false);
        List<(string, string, string)> staged = [];
        foreach (var path in (string[])["a.txt", "b.txt", "new/c.txt"])
        {
            var (name, digest) = work.Stage(stream => stream.Write([2]));
            staged.Add((path, name, digest));
        }
        var before = _sample.Content().ToList();
        var journal = FolderChange.Plan(work, OutputSample.Kind, staged, own);

        // The last step has nothing to rename.
        Assert.ThrowsAny<IOException>(() =>
            new Commit(work).Run(journal with { Removals = [.. journal.Removals, new("nowhere.txt", "")] })
        );

        Assert.Equal(before, _sample.Content());
        Assert.False(Directory.Exists(_sample.Path("new")));
    }
}
