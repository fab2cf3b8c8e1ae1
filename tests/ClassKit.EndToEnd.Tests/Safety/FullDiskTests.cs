using System.Diagnostics;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Safety;

/// <summary>Grading onto a disk without room: the grades there were stay, the message says why, and with room the next run succeeds.</summary>
public sealed class FullDiskTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private bool _isMounted;

    private string Disk => _folder.Of("disk");

    public void Dispose()
    {
        if (_isMounted) Run("umount", Disk);
        _folder.Dispose();
    }

    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    [InlineData(400)]
    public void Old_grades_stay_where_there_is_no_room_for_new_ones(int roomInKilobytes)
    {
        Mount();
        var (dealt, graded) = (_folder.Of("dealt"), Path.Combine(Disk, "graded"));
        ClassKitRun.Of("deal", Checkout.Demo.Lesson, "--roster", Checkout.Demo.Roster, "--out", dealt, "--seed", "2026", "--class", Checkout.Demo.Class).Done();
        ClassKitRun.Of("grade", dealt, "--returned", Path.Combine(dealt, "workbooks"), "--out", graded).Done();
        var before = FolderContent.Digests(graded);
        Fill(roomInKilobytes);

        var run = ClassKitRun.Of("grade", dealt, "--returned", Checkout.Demo.Returned, "--out", graded);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("Check that there is room", run.Problems, StringComparison.Ordinal);
        Assert.Equal(before, FolderContent.Digests(graded));

        File.Delete(Path.Combine(Disk, "filler"));
        ClassKitRun.Of("grade", dealt, "--returned", Checkout.Demo.Returned, "--out", graded).Done();
        Assert.NotEqual(before, FolderContent.Digests(graded));
    }

    private void Mount()
    {
        Directory.CreateDirectory(Disk);
        _isMounted = OperatingSystem.IsLinux() && Run("mount", "-t", "tmpfs", "-o", "size=12m", "tmpfs", Disk);
        if (!_isMounted) Assert.Skip("Only root can make a small disk to fill.");
    }

    /// <summary>Leaves so much room and no more.</summary>
    private void Fill(int kilobytes)
    {
        using var filler = File.Create(Path.Combine(Disk, "filler"));
        var block = new byte[4096];
        try
        {
            while (true)
            {
                filler.Write(block);
                filler.Flush(flushToDisk: true);
            }
        }
        catch (IOException)
        {
            filler.SetLength(Math.Max(0, filler.Length - (kilobytes * 1024)));
        }
    }

    private static bool Run(string program, params IReadOnlyList<string> arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true })!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
