using System.Diagnostics;
using System.Net.Sockets;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>
/// All that an instructor may have in a folder: files, links to files, folders and nowhere, hard links, pipes, sockets, empty and closed
/// folders, odd modes and times.
/// </summary>
internal static class InstructorsThings
{
    private const string Mark = "mine";

    private const string Make = """
        set -e
        mkdir -p "$1/mine" && cd "$1/mine"
        echo note > note.txt
        ln note.txt hard.txt
        ln -s note.txt link-to-file
        ln -s sub link-to-folder
        ln -s nowhere link-to-nothing
        ln -s . link-to-itself
        mkfifo pipe
        mkdir -p sub/empty closed
        echo secret > closed/secret.txt
        echo run > run.sh && chmod 4751 run.sh
        chmod 000 closed
        chmod 400 note.txt
        touch -h -d '2001-02-03 04:05:06.789' link-to-file note.txt sub/empty sub run.sh .
        cd ..
        echo more > mine.txt && touch -d '1999-12-31 23:59:59' mine.txt
        ln -s mine/sub mine-link
        mkfifo mine-pipe
        mkdir -p mine-empty
        """;

    /// <summary>Puts all of it into a folder.</summary>
    public static void Put(string folder)
    {
        if (!OperatingSystem.IsLinux())
            return;
        Run("bash", "-c", Make, "bash", folder);
        var socket = Path.Combine(folder, Mark, "socket");
        using var listener = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);

        // A socket's path must be short, a test's folder need not be.
        var shortPath = Path.Combine(Path.GetTempPath(), $"ck{Environment.ProcessId}-{Path.GetRandomFileName()}");
        listener.Bind(new UnixDomainSocketEndPoint(shortPath));
        Run("mv", shortPath, socket);
        Run("touch", "-h", "-d", "2002-02-02 02:02:02", Path.GetDirectoryName(socket)!);
    }

    /// <summary>True for a path of one of them.</summary>
    public static bool IsOne(string path) => path.Split('/').Any(name => name.StartsWith(Mark, StringComparison.Ordinal));

    /// <summary>Every one of them below a folder, with inode, kind, mode, links, owner, times of change, size and target.</summary>
    public static List<string> Snapshot(string folder) =>
        !OperatingSystem.IsLinux()
            ? []
            :
            [
                .. Run("find", folder, "-printf", "%P\t%i %y %m %n %U:%G %T@ %s %l\n")
                    .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                    .Where(line => IsOne(line.Split('\t')[0]))
                    .Order(StringComparer.Ordinal),
            ];

    private static string Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return output;
    }
}
