using ClassKit.Notes;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>A file of ours that the instructor changed stays, under a name that says so, and the run tells of it.</summary>
public sealed class ChangedFileTests : IDisposable
{
    private readonly OutputSample _sample = new();

    public void Dispose() => _sample.Dispose();

    [Fact]
    public void A_changed_file_is_set_aside_whether_there_is_a_new_one_or_not()
    {
        _sample.WriteOld();
        File.WriteAllText(_sample.Path("grades.csv"), "typed");
        File.WriteAllText(_sample.Path("feedback", "ada.html"), "typed");

        var written = _sample.WriteNew();

        Assert.Equal(
            ["feedback/ada (changed by you).html=typed", "feedback/ben.html=new", "grades (changed by you).csv=typed", "grades.csv=new"],
            _sample.Content()
        );
        Assert.Contains(new Note.KeptAside("grades.csv", "grades (changed by you).csv"), written.Notes);
        Assert.Contains(new Note.KeptAside("feedback/ada.html", "feedback/ada (changed by you).html"), written.Notes);
    }

    [Fact]
    public void One_set_aside_before_is_never_overwritten()
    {
        _sample.WriteOld();
        File.WriteAllText(_sample.Path("grades.csv"), "first");
        _sample.WriteNew();
        File.WriteAllText(_sample.Path("grades.csv"), "second");
        _sample.WriteNew();

        Assert.Equal(
            ["feedback/ben.html=new", "grades (changed by you 2).csv=second", "grades (changed by you).csv=first", "grades.csv=new"],
            _sample.Content()
        );
    }

    [Fact]
    public void A_link_or_a_folder_in_the_place_of_a_file_of_ours_is_set_aside_too_and_not_followed()
    {
        _sample.WriteOld();
        _sample.Folder.Write("elsewhere.csv", "old"u8.ToArray());
        File.Delete(_sample.Path("grades.csv"));
        File.CreateSymbolicLink(_sample.Path("grades.csv"), _sample.Folder.Of("elsewhere.csv"));
        File.Delete(_sample.Path("feedback", "ada.html"));
        _sample.Folder.Write("out/feedback/ada.html/photo.png", "mine"u8.ToArray());

        _sample.WriteNew();
        File.Delete(_sample.Path("grades.csv"));
        File.CreateSymbolicLink(_sample.Path("grades.csv"), "nowhere");
        _sample.WriteNew();

        Assert.Equal(_sample.Folder.Of("elsewhere.csv"), new FileInfo(_sample.Path("grades (changed by you).csv")).LinkTarget);
        Assert.Equal("nowhere", new FileInfo(_sample.Path("grades (changed by you 2).csv")).LinkTarget);
        Assert.Equal("old", File.ReadAllText(_sample.Folder.Of("elsewhere.csv")));
        Assert.Equal("mine", File.ReadAllText(_sample.Path("feedback", "ada (changed by you).html", "photo.png")));
        Assert.Equal("new", File.ReadAllText(_sample.Path("grades.csv")));
    }

    [Fact]
    public void A_file_of_ours_behind_a_folder_that_has_become_a_link_is_left_alone()
    {
        _sample.WriteOld();
        Directory.Move(_sample.Path("feedback"), _sample.Folder.Of("archive"));
        Directory.CreateSymbolicLink(_sample.Path("feedback"), _sample.Folder.Of("archive"));

        _sample.Write(OutputFile.OfText("grades.csv", "new"));

        Assert.Equal("old", File.ReadAllText(_sample.Folder.Of("archive", "ada.html")));
    }

    [Fact]
    public void A_file_that_the_instructor_removed_is_simply_written_again()
    {
        _sample.WriteOld();
        File.Delete(_sample.Path("grades.csv"));

        Assert.Empty(_sample.WriteNew().Notes);
        Assert.Equal(["feedback/ben.html=new", "grades.csv=new"], _sample.Content());
    }
}
