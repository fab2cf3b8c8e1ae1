using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>Every state that a killed run can leave behind is one that the next run makes good.</summary>
public sealed class OutputFolderTests : IDisposable
{
    private const string Kind = "grade";

    private static readonly IReadOnlyList<OutputFile> Old = [OutputFile.OfText("grades.csv", "old"), OutputFile.OfText("feedback/ada.html", "old")];
    private static readonly IReadOnlyList<OutputFile> New = [OutputFile.OfText("grades.csv", "new"), OutputFile.OfText("feedback/ben.html", "new")];

    private readonly TemporaryFolder _folder = new();

    private string Out => _folder.Of("out");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void New_files_replace_old_ones_and_leave_everyone_elses()
    {
        Write(Old);
        _folder.Write("out/corrections.csv", "mine"u8.ToArray());
        _folder.Write("out/feedback/note.txt", "mine"u8.ToArray());

        Write(New);

        Assert.Equal(["corrections.csv=mine", "feedback/ben.html=new", "feedback/note.txt=mine", "grades.csv=new"], Content());
        Assert.Equal(["out"], Directory.EnumerateFileSystemEntries(_folder.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void A_run_that_fails_while_it_writes_leaves_the_old_files_and_nothing_else()
    {
        Write(Old);
        var problem = OutputFolder.Write(Out, Kind, [.. New, new("late.html", _ => throw new IOException("No space left on device"))]);

        Assert.Contains("No space left", problem!.ToString(), StringComparison.Ordinal);
        Assert.Equal(["feedback/ada.html=old", "grades.csv=old"], Content());
        Assert.Equal(["out"], Directory.EnumerateFileSystemEntries(_folder.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void Killed_while_it_wrote()
    {
        Write(Old);
        _folder.Write(".out.classkit-new/grades.csv", "half"u8.ToArray());

        Assert.Equal(["feedback/ada.html=old", "grades.csv=old"], Content());
        Write(New);
        Assert.Equal(["feedback/ben.html=new", "grades.csv=new"], Content());
    }

    [Fact]
    public void Killed_after_the_swap()
    {
        Write(New);
        _folder.Write(".out.classkit-new/grades.csv", "old"u8.ToArray());

        Assert.Equal(["feedback/ben.html=new", "grades.csv=new"], Content());
        Write(Old);
        Assert.Equal(["feedback/ada.html=old", "grades.csv=old"], Content());
        Assert.Equal(["out"], Directory.EnumerateFileSystemEntries(_folder.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void Killed_between_the_two_steps_of_a_system_that_has_no_single_one()
    {
        Write(Old);
        _folder.Write("out/corrections.csv", "mine"u8.ToArray());
        Directory.Move(Out, _folder.Of(".out.classkit-old"));
        _folder.Write(".out.classkit-new/grades.csv", "new"u8.ToArray());

        Write(New);

        Assert.Equal(["corrections.csv=mine", "feedback/ben.html=new", "grades.csv=new"], Content());
        Assert.Equal(["out"], Directory.EnumerateFileSystemEntries(_folder.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void Two_folders_are_swapped_in_one_step_where_the_system_has_one()
    {
        if (!OperatingSystem.IsLinux()) Assert.Skip("Only Linux has renameat2.");
        _folder.Write("one/a.txt", [1]);
        _folder.Write("two/b.txt", [2]);

        Assert.True(FolderExchange.Try(_folder.Of("one"), _folder.Of("two")));

        Assert.True(File.Exists(_folder.Of("one", "b.txt")) && File.Exists(_folder.Of("two", "a.txt")));
        Assert.False(FolderExchange.Try(_folder.Of("one"), _folder.Of("nowhere")));
    }

    private void Write(IReadOnlyList<OutputFile> files) => Assert.Null(OutputFolder.Write(Out, Kind, files));

    /// <summary>Every file but the list of files, with its text.</summary>
    private IEnumerable<string> Content() => Directory.EnumerateFiles(Out, "*", SearchOption.AllDirectories)
        .Select(path => $"{Path.GetRelativePath(Out, path).Replace('\\', '/')}={File.ReadAllText(path)}")
        .Where(file => !file.StartsWith(".classkit-files", StringComparison.Ordinal)).Order(StringComparer.Ordinal);
}
