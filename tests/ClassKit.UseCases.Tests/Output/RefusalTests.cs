using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>Folders that are not written to: each is named with a way out, and nothing in it or beside it is touched.</summary>
public sealed class RefusalTests : IDisposable
{
    private readonly OutputSample _sample = new();

    public void Dispose() => _sample.Dispose();

    [Fact]
    public void A_folder_with_something_in_it_and_without_our_list()
    {
        _sample.Folder.Write("out/thesis.docx", [1]);
        Refused(_sample.Out, "thesis.docx is there already");
    }

    [Theory]
    [InlineData("")]
    [InlineData("something else")]
    [InlineData("written by: classkit grade\n../note.txt\n")]
    [InlineData("written by: classkit grade\n/etc/hostname\n")]
    [InlineData("written by: classkit grade\ndigests: sha-256\nabc  note.txt\n")]
    [InlineData("written by: classkit grade\ndigests: sha-256\n-  ../\n")]
    public void A_list_that_we_did_not_write(string list)
    {
        _sample.Folder.Write("out/.classkit-files", System.Text.Encoding.UTF8.GetBytes(list));
        _sample.Folder.Write("note.txt", [1]);
        Refused(_sample.Out, "is not as ClassKit wrote it");
    }

    [Fact]
    public void A_folder_of_another_command()
    {
        OutputFolder.Write(_sample.Out, "deal", OutputSample.Old);
        Refused(_sample.Out, "written by `deal`");
    }

    [Fact]
    public void The_root_the_home_folder_the_current_one_and_all_above()
    {
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        Assert.Contains("root", Because(Path.GetPathRoot(home)!), StringComparison.Ordinal);
        Assert.Contains("home folder", Because(home), StringComparison.Ordinal);
        Assert.Contains("current folder", Because("."), StringComparison.Ordinal);
        Assert.Contains("current folder lies in it", Because(".."), StringComparison.Ordinal);
        Assert.Contains("current folder lies in it", Because(Path.Combine("..", "..")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_and_a_file()
    {
        Directory.CreateDirectory(_sample.Folder.Of("elsewhere"));
        Directory.CreateSymbolicLink(_sample.Out, _sample.Folder.Of("elsewhere"));
        Refused(_sample.Out, "a link that leads to");
        Refused(_sample.Folder.Of("out") + "/", "a link that leads to");
        File.WriteAllText(_sample.Folder.Of("file"), "mine");
        Refused(_sample.Folder.Of("file"), "This is a file");
        Refused(_sample.Folder.Of("file", "out"), "is a file");
        Refused("", "has no name");
    }

    [Fact]
    public void A_folder_that_an_input_lies_in_or_that_lies_in_an_input_also_by_way_of_a_link()
    {
        Directory.CreateDirectory(_sample.Folder.Of("lesson", "exercises"));
        Directory.CreateSymbolicLink(_sample.Folder.Of("short"), _sample.Folder.Of("lesson"));
        _sample.WriteOld();
        _sample.Folder.Write("out/roster.csv", [1]);

        Refused(_sample.Folder.Of("lesson", "out"), "which is read", _sample.Folder.Of("lesson"));
        Refused(_sample.Folder.Of("lesson", "out"), "which is read", _sample.Folder.Of("short"));
        Refused(_sample.Folder.Of("short", "out"), "which is read", _sample.Folder.Of("lesson"));
        Refused(_sample.Folder.Of("lesson"), "also read", _sample.Folder.Of("lesson"));
        Refused(_sample.Out, "roster.csv, which is read, lies in it", _sample.Path("roster.csv"));
    }

    [Fact]
    public void A_file_of_the_instructors_where_a_new_one_must_go_and_whatever_is_no_folder_on_the_way()
    {
        _sample.Write(OutputFile.OfText("grades.csv", "old"));
        _sample.Folder.Write("out/feedback/ben.html", "mine"u8.ToArray());
        Refused(_sample.Out, "feedback/ben.html is there already");
        Directory.Delete(_sample.Path("feedback"), recursive: true);

        Directory.CreateDirectory(_sample.Folder.Of("elsewhere"));
        Directory.CreateSymbolicLink(_sample.Path("feedback"), _sample.Folder.Of("elsewhere"));
        Refused(_sample.Out, "feedback is no folder");
        Assert.Empty(Directory.EnumerateFileSystemEntries(_sample.Folder.Of("elsewhere")));
    }

    [Theory]
    [InlineData("../ben.html")]
    [InlineData("feedback/../../ben.html")]
    [InlineData("/tmp/classkit-escaped.html")]
    [InlineData(".classkit-files")]
    [InlineData("feedback//ben.html")]
    public void A_file_that_would_leave_the_folder(string path)
    {
        var written = OutputFolder.Write(_sample.Out, OutputSample.Kind, [OutputFile.OfText(path, "x")]);

        Assert.Contains("is no name for a file of this folder", Assert.Single(written.Problems).ToString(), StringComparison.Ordinal);
        Assert.Empty(_sample.Beside());
    }

    private static string Because(string folder) => Refusals.Of(new(folder, OutputSample.Kind))!.ToString();

    private void Refused(string folder, string words, params string[] inputs)
    {
        var before = Snapshot();

        var written = OutputFolder.Write(new OutputTarget(folder, OutputSample.Kind, inputs), () => new(OutputSample.New, [], []));

        Assert.Contains(words, Assert.Single(written.Problems).ToString(), StringComparison.Ordinal);
        Assert.Equal(before, Snapshot());
    }

    private List<string> Snapshot() =>
        [
            .. Directory
                .EnumerateFileSystemEntries(_sample.Folder.Path, "*", SearchOption.AllDirectories)
                .Where(path => !path.EndsWith(WriterLock.FileName, StringComparison.Ordinal) && path != _sample.Out)
                .Select(path => $"{path} {File.GetLastWriteTimeUtc(path):O}")
                .Order(StringComparer.Ordinal),
        ];
}
