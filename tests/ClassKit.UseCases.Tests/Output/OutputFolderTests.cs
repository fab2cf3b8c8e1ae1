using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>A folder of ours holds the old files or the new ones, and what is not ours stays as it is.</summary>
public sealed class OutputFolderTests : IDisposable
{
    private readonly OutputSample _sample = new();

    public void Dispose() => _sample.Dispose();

    [Fact]
    public void New_files_replace_old_ones_and_leave_everyone_elses()
    {
        _sample.WriteOld();
        _sample.Folder.Write("out/corrections.csv", "mine"u8.ToArray());
        _sample.Folder.Write("out/feedback/note.txt", "mine"u8.ToArray());

        _sample.WriteNew();

        Assert.Equal(["corrections.csv=mine", "feedback/ben.html=new", "feedback/note.txt=mine", "grades.csv=new"], _sample.Content());
        Assert.Equal(["out"], _sample.Beside());
    }

    [Fact]
    public void A_run_that_fails_while_it_writes_leaves_the_old_files_and_nothing_else()
    {
        _sample.WriteOld();
        var before = _sample.Everything();

        var written = OutputFolder.Write(
            _sample.Out,
            OutputSample.Kind,
            [.. OutputSample.New, new("late.html", _ => throw new IOException("No space left on device"))]
        );

        Assert.Contains("No space left", Assert.Single(written.Problems).ToString(), StringComparison.Ordinal);
        Assert.Equal(before, _sample.Everything());
        Assert.Equal(["out"], _sample.Beside());
    }

    [Fact]
    public void A_run_that_fails_leaves_no_trace_of_a_folder_that_was_not_there_or_was_empty()
    {
        OutputFile broken = new("late.html", _ => throw new IOException("No space left on device"));

        Assert.False(OutputFolder.Write(_sample.Folder.Of("term", "one", "out"), OutputSample.Kind, [broken]).Succeeded);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_sample.Folder.Path));

        Directory.CreateDirectory(_sample.Out);
        Assert.False(OutputFolder.Write(_sample.Out, OutputSample.Kind, [broken]).Succeeded);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_sample.Out));
    }

    [Fact]
    public void A_file_that_is_the_same_stays_as_it_is()
    {
        _sample.WriteOld();
        File.SetLastWriteTimeUtc(_sample.Path("grades.csv"), new(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc));

        _sample.WriteOld();

        Assert.Equal(new(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc), File.GetLastWriteTimeUtc(_sample.Path("grades.csv")));
    }

    [Fact]
    public void A_folder_that_we_made_and_emptied_goes_and_one_that_was_there_stays()
    {
        _sample.Write(new("ours/a.txt", [1]), new("kept/a.txt", [1]));
        Directory.CreateDirectory(_sample.Path("theirs"));
        _sample.Folder.Write("out/kept/note.txt", "mine"u8.ToArray());
        _sample.Write(new OutputFile("theirs/a.txt", [1]));

        _sample.Write(new OutputFile("b.txt", [1]));

        Assert.False(Directory.Exists(_sample.Path("ours")));
        Assert.True(Directory.Exists(_sample.Path("theirs")));
        Assert.Equal(["b.txt=\u0001", "kept/note.txt=mine"], _sample.Content());
    }

    [Fact]
    public void A_mode_that_the_instructor_gave_a_file_of_ours_stays()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no modes.");
            return;
        }
        _sample.WriteOld();
        File.SetUnixFileMode(_sample.Path("grades.csv"), UnixFileMode.UserRead | UnixFileMode.UserWrite);

        _sample.WriteNew();

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(_sample.Path("grades.csv")));
    }

    [Fact]
    public void A_folder_of_the_first_version_is_replaced_file_by_file()
    {
        _sample.Folder.Write("out/grades.csv", "old"u8.ToArray());
        _sample.Folder.Write("out/feedback/ada.html", "old"u8.ToArray());
        _sample.Folder.Write("out/mine.txt", "mine"u8.ToArray());
        _sample.Folder.Write("out/.classkit-files", "written by: classkit grade\nfeedback/ada.html\ngrades.csv\n"u8.ToArray());

        _sample.WriteNew();

        Assert.Equal(["feedback/ben.html=new", "grades.csv=new", "mine.txt=mine"], _sample.Content());
    }

    [Fact]
    public void In_a_folder_of_the_first_version_a_file_that_is_younger_than_its_list_is_set_aside()
    {
        _sample.Folder.Write("out/grades.csv", "typed"u8.ToArray());
        _sample.Folder.Write("out/.classkit-files", "written by: classkit grade\ngrades.csv\n"u8.ToArray());
        File.SetLastWriteTimeUtc(_sample.Path(".classkit-files"), File.GetLastWriteTimeUtc(_sample.Path("grades.csv")).AddMinutes(-1));

        _sample.WriteNew();

        Assert.Equal(["feedback/ben.html=new", "grades (changed by you).csv=typed", "grades.csv=new"], _sample.Content());
    }

    [Fact]
    public void Two_files_are_swapped_in_one_step_where_the_system_has_one()
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("Only Linux has renameat2.");
        _sample.Folder.Write("one.txt", [1]);
        _sample.Folder.Write("two.txt", [2]);

        Assert.True(Exchange.Try(_sample.Folder.Of("one.txt"), _sample.Folder.Of("two.txt")));

        Assert.Equal([2], File.ReadAllBytes(_sample.Folder.Of("one.txt")));
        Assert.False(Exchange.Try(_sample.Folder.Of("one.txt"), _sample.Folder.Of("nowhere")));
    }

    [Fact]
    public void An_objection_to_what_is_there_stops_everything()
    {
        _sample.WriteOld();

        var written = OutputFolder.Write(new OutputTarget(_sample.Out, OutputSample.Kind), () =>
            new(OutputSample.New, [], [])
            {
                Objection = folder =>
                    File.ReadAllText(Path.Combine(folder, "grades.csv")) == "old"
                        ? new(folder, null, "Another deal is here", "Name another folder.")
                        : null,
            }
        );

        Assert.Contains("Another deal", Assert.Single(written.Problems).ToString(), StringComparison.Ordinal);
        Assert.Equal(["feedback/ada.html=old", "grades.csv=old"], _sample.Content());
    }

    [Fact]
    public void What_is_added_to_a_file_of_the_instructors_changes_none_of_its_bytes()
    {
        _sample.WriteOld();
        byte[] before = [0xFF, 0xFE, 1, 2, 13, 10];
        _sample.Folder.Write("out/corrections.csv", before);

        OutputFolder.Write(new OutputTarget(_sample.Out, OutputSample.Kind), () =>
            new(OutputSample.New, [], []) { Additions = [new(_sample.Path("corrections.csv"), [7, 8])] }
        );

        Assert.Equal([.. before, 7, 8], File.ReadAllBytes(_sample.Path("corrections.csv")));
    }
}
