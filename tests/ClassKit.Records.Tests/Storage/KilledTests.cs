using System.Diagnostics;
using System.Globalization;
using ClassKit.Records.Classes;
using ClassKit.Records.Tests.Samples;

namespace ClassKit.Records.Tests.Storage;

/// <summary>
/// A process is ended at any moment of writing (SIGKILL), and nothing that was committed is lost. <c>CLASSKIT_KILLS=200</c> does it 200
/// times.
/// </summary>
public sealed class KilledTests : IDisposable
{
    private const string Said = "committed ";

    private readonly RecordFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Nothing_committed_is_lost_when_a_writer_is_ended()
    {
        var random = new Random(18);
        var committed = 0;
        var kills = int.TryParse(Environment.GetEnvironmentVariable("CLASSKIT_KILLS"), CultureInfo.InvariantCulture, out var wanted)
            ? wanted
            : 20;
        for (var kill = 0; kill < kills; kill++)
        {
            var before = committed;
            using (var writer = Writer.Start(_folder.File))
            {
                // From the very beginning of the file on; later ones at any part of a commit.
                committed = Math.Max(committed, LastCommitted(writer, kill == 0 ? 0 : random.Next(1, 12)));
                Thread.SpinWait(random.Next(0, 400_000));
                writer.Kill();
                committed = Math.Max(committed, LastSaid(writer.StandardOutput.ReadToEnd()));
                writer.WaitForExit();
            }
            Assert.True(kill == 0 || committed > before);
            using var record = _folder.Open();
            Writer.AssertWhole(record, committed);
            // A commit whose word did not come through counts from now on.
            committed = record.Read(ClassRegister.All).Count;
        }
    }

    /// <summary>Waits for a number of commits.</summary>
    private static int LastCommitted(Process writer, int commits)
    {
        var last = 0;
        while (commits > 0 && writer.StandardOutput.ReadLine() is { } line)
        {
            if (!line.StartsWith(Said, StringComparison.Ordinal))
                continue;
            last = LastSaid(line);
            commits--;
        }
        return last;
    }

    /// <summary>The last whole line that says so.</summary>
    private static int LastSaid(string text) =>
        text.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => line.StartsWith(Said, StringComparison.Ordinal))
            .Select(line => int.Parse(line[Said.Length..].TrimEnd('\r'), CultureInfo.InvariantCulture))
            .LastOrDefault();
}
