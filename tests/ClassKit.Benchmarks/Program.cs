using System.Globalization;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.NoEmit;
using ClassKit.Benchmarks.LargeClasses;

// What `.ci/large` measures commands with: `roster STUDENTS FILE` and `return DEALT FOLDER`.
if (args is ["roster", var students, var file])
{
    LargeRoster.Write(int.Parse(students, CultureInfo.InvariantCulture), file);
    return;
}
if (args is ["return", var dealt, var returned])
{
    LargeReturn.Write(dealt, returned);
    return;
}

// Run with `dotnet run -c Release --project tests/ClassKit.Benchmarks -- --filter '*'`. Each class holds one claim: its methods run
// in one process, one after the other, and the Ratio column compares them with the baseline of the same run.
if (args is ["record-over-years", ..])
{
    ClassKit.Benchmarks.RecordOverYears.Run(args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 5);
    return;
}
var config = DefaultConfig
    .Instance.AddJob(Job.ShortRun.WithIterationCount(7).WithToolchain(new InProcessNoEmitToolchain(TimeSpan.FromHours(1), logOutput: true)))
    .AddColumn(StatisticColumn.Median)
    .HideColumns("Job", "Toolchain", "IterationCount", "LaunchCount", "WarmupCount", "Error")
    .WithArtifactsPath(Path.Combine(Path.GetTempPath(), "classkit-benchmarks"));
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args, config);
