using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>
/// Single files of ours are taken out of a folder and others put in the places of theirs, all of it or nothing, and the list stays true.
/// </summary>
public sealed class AmendTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public AmendTests()
    {
        OutputFolder.Write(
            _folder.Of("out"),
            "sample",
            [OutputFile.OfText("a.txt", "A"), OutputFile.OfText("in/b.txt", "B"), OutputFile.OfText("c.txt", "C")]
        );
        _folder.Write("out/mine.txt", "M"u8.ToArray());
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_files_are_others_afterwards_and_the_rest_is_as_it_was()
    {
        OutputFolder.Amend(_folder.Of("out"), "erase", [OutputFile.OfText("in/b.txt", "B2")], new HashSet<string> { "a.txt" });

        AsAmended();
        Assert.Empty(OutputFolder.Changed(_folder.Of("out"), ["in/b.txt", "c.txt"]));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_run_that_was_killed_is_finished_by_whoever_reads_next_or_has_done_nothing(bool hasJournal)
    {
        var work = new WorkFolder(_folder.Of("out"));
        work.Begin("erase");
        var (name, digest) = work.Stage(stream => stream.Write("B2"u8));
        var journal = FolderChange.Amend(
            work,
            OutputManifest.Read(work.Root)!,
            [("in/b.txt", name, digest)],
            new HashSet<string> { "a.txt" }
        );
        if (hasJournal)
            work.Commit(journal);

        // Killed here.
        Assert.Null(OutputFolder.Settle(_folder.Of("out")));

        if (hasJournal)
            AsAmended();
        else
            Assert.Equal(("A", "B", "C"), (Text("a.txt"), Text("in/b.txt"), Text("c.txt")));
    }

    [Fact]
    public void While_somebody_writes_there_nothing_is_changed()
    {
        using var held = WriterLock.TryTake(_folder.Of("out"));

        Assert.Throws<IOException>(() => OutputFolder.Amend(_folder.Of("out"), "erase", [], new HashSet<string> { "a.txt" }));
        Assert.Equal("A", Text("a.txt"));
    }

    private void AsAmended()
    {
        Assert.False(File.Exists(_folder.Of("out", "a.txt")));
        Assert.Equal(("B2", "C", "M"), (Text("in/b.txt"), Text("c.txt"), Text("mine.txt")));
        Assert.Equal(
            ["c.txt", "in/b.txt"],
            OutputManifest.Read(_folder.Of("out"))!.Files.Select(file => file.Path).Order(StringComparer.Ordinal)
        );
        Assert.Equal("sample", OutputManifest.Read(_folder.Of("out"))!.Kind);
    }

    private string Text(string file) => File.ReadAllText(_folder.Of("out/" + file));
}
