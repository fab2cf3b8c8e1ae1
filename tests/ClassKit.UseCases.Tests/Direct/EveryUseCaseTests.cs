using System.Reflection;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Direct;

/// <summary>Every use case can be started, watched and stopped without a front and without a disk.</summary>
public class EveryUseCaseTests
{
    public static TheoryData<string> Names => [.. StartedUseCase.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_tells_of_its_steps_and_makes_its_files_in_memory(string name)
    {
        var watcher = new Watcher();
        var files = StartedUseCase.All[name](new(watcher));

        Assert.NotEmpty(files);
        Assert.All(files, file => Assert.NotEmpty(file.Content));
        Assert.NotEmpty(watcher.Seen);
        foreach (var counted in watcher.Seen.Where(progress => progress.Total is not null).GroupBy(progress => progress.Step))
            Assert.Equal(counted.Last().Total, counted.Last().Done);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_stops_wherever_it_is_told_to(string name)
    {
        var watcher = new Watcher();
        StartedUseCase.All[name](new(watcher));

        foreach (var at in new[] { 0, watcher.Seen.Count / 2, watcher.Seen.Count - 1 }.Distinct())
        {
            using var stop = new CancellationTokenSource();
            var told = 0;
            var stopper = new Watcher(_ =>
            {
                if (told++ == at) stop.Cancel();
            });
            var stopped = Record.Exception(() => StartedUseCase.All[name](new(stopper, stop.Token)));
            // What is told last may be all that there was to do.
            if (stopped is null) Assert.Equal(watcher.Seen.Count - 1, at);
            else Assert.IsAssignableFrom<OperationCanceledException>(stopped);
            Assert.Equal(at + 1, stopper.Seen.Count);
        }
    }

    [Fact]
    public void No_use_case_is_missing_here() =>
        Assert.Equal(Runs().Select(run => run.DeclaringType!.Name).Order(StringComparer.Ordinal), StartedUseCase.All.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void Every_use_case_takes_a_request_and_a_run_and_no_request_is_without_one()
    {
        Assert.All(Runs(), run => Assert.EndsWith("Request", Assert.Single(run.GetParameters().SkipLast(1)).ParameterType.Name, StringComparison.Ordinal));
        Assert.Equal(
            typeof(Run).Assembly.GetExportedTypes().Where(type => type.Name.EndsWith("Request", StringComparison.Ordinal)).Select(type => type.Name).Order(StringComparer.Ordinal),
            Runs().Select(run => run.GetParameters()[0].ParameterType.Name).Order(StringComparer.Ordinal));
    }

    /// <summary>What begins work: whoever is called Run, and whoever takes a run.</summary>
    private static IReadOnlyList<MethodInfo> Runs() =>
    [
        .. typeof(Run).Assembly.GetExportedTypes()
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(method => method.Name == "Run" || (method.GetParameters() is [.., { ParameterType: var last }] && last == typeof(Run) && method.DeclaringType != typeof(OutputFolder))),
    ];
}
