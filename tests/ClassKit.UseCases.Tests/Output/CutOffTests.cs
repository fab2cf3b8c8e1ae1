using ClassKit.Notes;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>Every state that a killed run can leave behind is one that the next run, writing or reading, makes good.</summary>
public sealed class CutOffTests : IDisposable
{
    private static readonly string[] OldContent = ["feedback/ada.html=old", "grades.csv=old", "note.txt=mine"];
    private static readonly string[] NewContent = ["feedback/ben.html=new", "grades.csv=new", "note.txt=mine"];

    private readonly OutputSample _sample = new();

    public void Dispose() => _sample.Dispose();

    [Fact]
    public void Killed_while_it_wrote()
    {
        Begin();
        Staged();

        Assert.Null(OutputFolder.Settle(_sample.Out));
        Assert.Equal(OldContent, _sample.Content());
        _sample.WriteNew();
        Assert.Equal(NewContent, _sample.Content());
    }

    /// <param name="steps">How many of the renames had happened: a folder exists already, two files are put, the list is put, one is
    /// removed.</param>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Killed_while_it_put_files_in_place_and_then_read(int steps)
    {
        Begin();
        PutInPart(steps);

        Assert.Null(OutputFolder.Settle(_sample.Path("feedback")));

        Assert.Equal(NewContent, _sample.Content());
        Assert.False(Directory.Exists(_sample.Path(".classkit-work")));
        Assert.Equal(["feedback/ben.html", "grades.csv"], OutputManifest.Read(_sample.Out)!.Files.Select(file => file.Path));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(4)]
    public void Killed_while_it_put_files_in_place_and_then_written(int steps)
    {
        Begin();
        PutInPart(steps);

        var written = _sample.WriteOld();

        Assert.Contains(written.Notes, note => note is Note.Finished);
        Assert.Equal(OldContent, _sample.Content());
    }

    [Fact]
    public void What_the_instructor_changed_after_the_kill_is_set_aside()
    {
        Begin();
        PutInPart(0);
        File.WriteAllText(_sample.Path("grades.csv"), "typed");
        File.WriteAllText(_sample.Path("feedback", "ada.html"), "typed");
        File.WriteAllText(_sample.Path("feedback", "ben.html"), "also mine");

        Assert.Null(OutputFolder.Settle(_sample.Out));

        Assert.Equal(
            [
                "feedback/ada (changed by you).html=typed",
                "feedback/ben (changed by you).html=also mine",
                "feedback/ben.html=new",
                "grades (changed by you).csv=typed",
                "grades.csv=new",
                "note.txt=mine",
            ],
            _sample.Content()
        );
    }

    [Theory]
    [InlineData(
        "{\"command\":\"grade\",\"folders\":[],\"asides\":[],\"puts\":[],\"removals\":[{\"path\":\"../note.txt\",\"digest\":\"\"}],\"emptied\":[]}"
    )]
    [InlineData("{\"command\":\"grade\",\"folders\":[\"/tmp/x\"],\"asides\":[],\"puts\":[],\"removals\":[],\"emptied\":[]}")]
    [InlineData(
        "{\"command\":\"grade\",\"folders\":[],\"asides\":[],\"puts\":[{\"staged\":\"../../note.txt\",\"path\":\"a\",\"digest\":\"\",\"over\":null}],\"removals\":[],\"emptied\":[]}"
    )]
    [InlineData("half a jour")]
    public void A_journal_that_leads_elsewhere_is_not_believed(string journal)
    {
        Begin();
        _sample.Folder.Write("out/.classkit-work/journal", System.Text.Encoding.UTF8.GetBytes(journal));

        Assert.NotNull(OutputFolder.Settle(_sample.Out));
        Assert.False(OutputFolder.Write(_sample.Out, OutputSample.Kind, OutputSample.New).Succeeded);

        Assert.Equal(OldContent, _sample.Content());
    }

    [Fact]
    public void Killed_while_it_made_a_folder_that_was_not_there()
    {
        _sample.Folder.Write(".out.classkit-fresh/.classkit-work/0", "half"u8.ToArray());
        _sample.Folder.Write(".out.classkit-fresh/grades.csv", "half"u8.ToArray());

        _sample.WriteNew();

        Assert.Equal(["feedback/ben.html=new", "grades.csv=new"], _sample.Content());
        Assert.Equal(["out"], _sample.Beside());
    }

    private void Begin()
    {
        _sample.WriteOld();
        _sample.Folder.Write("out/note.txt", "mine"u8.ToArray());
    }

    /// <summary>The new files staged, as a run does it.</summary>
    private (WorkFolder Work, Journal Journal) Staged()
    {
        var work = new WorkFolder(_sample.Out);
        work.Begin(OutputSample.Kind);
        var own = new OwnFiles(_sample.Out, OutputManifest.Read(_sample.Out), ignoresCase: false);
        List<(string, string, string)> staged = [];
        foreach (var file in OutputSample.New)
        {
            var (name, digest) = work.Stage(file.WriteTo);
            staged.Add((file.Path, name, digest));
        }
        return (work, FolderChange.Plan(work, OutputSample.Kind, staged, own));
    }

    /// <summary>Commits and does the first steps of what the journal says.</summary>
    private void PutInPart(int steps)
    {
        var (work, journal) = Staged();
        work.Commit(journal);
        var done = journal with
        {
            Puts = [.. journal.Puts.Take(steps)],
            Removals = [.. journal.Removals.Take(Math.Max(0, steps - journal.Puts.Count))],
        };
        new Commit(work).Run(done);
    }
}
