using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Safety;

/// <summary>Work onto a disk without room: what was there stays, the message says why, and with room the next run succeeds.</summary>
public sealed class FullDiskTests(TourRun tour) : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly SmallDisk _disk = SmallDisk.OrSkip();

    public void Dispose()
    {
        _disk.Dispose();
        _folder.Dispose();
    }

    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    [InlineData(400)]
    public void Old_grades_stay_where_there_is_no_room_for_new_ones(int roomInKilobytes)
    {
        var (dealt, graded) = (Path.Combine(tour.Folder, "dealt"), Path.Combine(_disk.Path, "graded"));
        ClassKitRun.Of("grade", dealt, "--returned", Checkout.Demo.Returned, "--out", graded).Done();
        var before = FolderContent.Digests(graded);
        _disk.Fill(roomInKilobytes);

        var run = ClassKitRun.Of("grade", dealt, "--returned", Path.Combine(dealt, "workbooks"), "--out", graded);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("Check that there is room", run.Problems, StringComparison.Ordinal);
        Assert.Equal(before, FolderContent.Digests(graded));

        _disk.Empty();
        ClassKitRun.Of("grade", dealt, "--returned", Path.Combine(dealt, "workbooks"), "--out", graded).Done();
        Assert.NotEqual(before, FolderContent.Digests(graded));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(16)]
    [InlineData(200)]
    public void What_is_on_record_stays_where_there_is_no_room_for_more(int roomInKilobytes)
    {
        var (dealt, graded, teaching) = (
            Path.Combine(tour.Folder, "dealt"),
            Path.Combine(tour.Folder, "graded"),
            Directory.CreateDirectory(Path.Combine(_disk.Path, "teaching")).FullName
        );
        ClassKitRun
            .Of("enter", Path.Combine(Checkout.Demo.Root, "demo-cohort", "term", "term.md"), "--record", teaching, "--by", "Kim")
            .Done();
        var before = Tables("before");
        _disk.Fill(roomInKilobytes);

        var run = ClassKitRun.Of("enter", graded, "--dealt", dealt, "--record", teaching, "--by", "Kim");

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("There is no room left on the disk", run.Problems, StringComparison.Ordinal);
        _disk.Empty();
        Assert.Equal(before, Tables("after"));
        ClassKitRun.Of("enter", graded, "--dealt", dealt, "--record", teaching, "--by", "Kim").Done();
        Assert.NotEqual(before, Tables("again"));

        IEnumerable<(string, string)> Tables(string name)
        {
            ClassKitRun.Of("write-out", teaching, "--out", _folder.Of(name)).Done();
            return
            [
                .. Directory
                    .EnumerateFiles(_folder.Of(name), "*.csv")
                    .Order(StringComparer.Ordinal)
                    .Select(file => (Path.GetFileName(file), File.ReadAllText(file))),
            ];
        }
    }
}
