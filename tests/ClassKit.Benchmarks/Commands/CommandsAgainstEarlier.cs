using System.Diagnostics;
using BenchmarkDotNet.Attributes;
using ClassKit.UseCases.Touring;

namespace ClassKit.Benchmarks.Commands;

/// <summary>
/// Whole commands as people run them, fresh processes and all, against those of an earlier checkout, each on content of its own. Publish in
/// both (<c>dotnet publish src/ClassKit.Cli -o my-classkit</c>) and name the earlier one's folder in <c>CLASSKIT_EARLIER</c>.
/// </summary>
public class CommandsAgainstEarlier
{
    private readonly string _here = DemoMaterial.Find(AppContext.BaseDirectory, Environment.CurrentDirectory)?.Lesson is { } lesson
        ? Path.GetFullPath(Path.Combine(lesson, "..", ".."))
        : throw new InvalidOperationException("The benchmark runs inside a checkout.");

    private string _out = "";

    /// <summary>What is run. A rehearsal deals, fills and grades.</summary>
    [Params(
        "--version",
        "deal lessons/one-tin-three-lifts --roster demo-cohort/roster.csv --seed 1 --out",
        "rehearse lessons/one-tin-three-lifts --students 24 --seed 1 --out",
        "pack lessons/one-tin-three-lifts --class demo-cohort/class.md --out"
    )]
    public string Command { get; set; } = "";

    /// <summary>A new folder for every run, so that nothing is compared with what an earlier one left.</summary>
    [IterationSetup]
    public void Begin() => _out = Directory.CreateTempSubdirectory("classkit-benchmark-").FullName;

    /// <summary>Takes it away again.</summary>
    [IterationCleanup]
    public void End() => Directory.Delete(_out, recursive: true);

    /// <summary>The earlier checkout's.</summary>
    [Benchmark(Baseline = true)]
    public void Earlier() =>
        Run(
            Environment.GetEnvironmentVariable("CLASSKIT_EARLIER")
                ?? throw new InvalidOperationException("CLASSKIT_EARLIER names no checkout.")
        );

    /// <summary>This checkout's.</summary>
    [Benchmark]
    public void Now() => Run(_here);

    private void Run(string checkout)
    {
        IEnumerable<string> arguments = Command.EndsWith("--out", StringComparison.Ordinal)
            ? [.. Command.Split(' '), _out]
            : Command.Split(' ');
        using var process = Process.Start(
            new ProcessStartInfo(Path.Combine(checkout, "my-classkit", "classkit"), arguments)
            {
                WorkingDirectory = checkout,
                RedirectStandardOutput = true,
            }
        )!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{Command} in {checkout} ended with {process.ExitCode}.");
    }
}
