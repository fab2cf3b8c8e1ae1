using System.Diagnostics;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>A disk of twelve megabytes in memory, to be filled; the test skips where this user cannot make one.</summary>
internal sealed class SmallDisk : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private SmallDisk() => Directory.CreateDirectory(Path);

    /// <summary>Where it is mounted.</summary>
    public string Path => _folder.Of("disk");

    public static SmallDisk OrSkip()
    {
        var disk = new SmallDisk();
        if (OperatingSystem.IsLinux() && Run("mount", "-t", "tmpfs", "-o", "size=12m", "tmpfs", disk.Path))
            return disk;
        disk._folder.Dispose();
        Assert.Skip("Only root can make a small disk to fill.");
        return disk;
    }

    public void Dispose()
    {
        Run("umount", Path);
        _folder.Dispose();
    }

    /// <summary>Leaves so much room and no more.</summary>
    public void Fill(int kilobytes)
    {
        using var filler = File.Create(Filler);
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

    /// <summary>Makes room again.</summary>
    public void Empty() => File.Delete(Filler);

    private string Filler => System.IO.Path.Combine(Path, "filler");

    private static bool Run(string program, params IReadOnlyList<string> arguments)
    {
        try
        {
            using var process = Process.Start(
                new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true }
            )!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
