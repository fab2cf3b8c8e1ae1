using System.Reflection;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Direct;

/// <summary>Every use case can be started, watched and stopped without a front and without a disk.</summary>
public class EveryUseCaseTests
{
    /// <summary>The tests of a class run one after the other.</summary>
    private static readonly Dictionary<string, (Watcher, int, IReadOnlyList<OutputFile>)> Wholes = [];

    public static TheoryData<string> Names => [.. StartedUseCase.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_tells_of_its_steps_and_makes_its_files_in_memory(string name)
    {
        var (watcher, _, files) = Whole(name);

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
        var steps = Whole(name).Steps;

        // At its first step, at its last and on the way; in an ordinary run use cases take turns.
        foreach (var at in Trials.Some(new[] { 0, steps / 2, steps - 1 }.Distinct(), 2, Trials.Beginning(name)))
        {
            using var stop = new CancellationTokenSource();
            var told = 0;
            var stopper = new Watcher(_ =>
            {
                if (told++ == at)
                    stop.Cancel();
            });
            var stopped = Record.Exception(() => StartedUseCase.All[name](new(stopper, stop.Token)));
            // What is told last may be all that there was to do.
            if (stopped is null)
                Assert.Equal(steps - 1, at);
            else
                Assert.IsAssignableFrom<OperationCanceledException>(stopped);
            Assert.Equal(at + 1, stopper.Seen.Count);
        }
    }

    [Fact]
    public void No_use_case_is_missing_here() =>
        Assert.Equal(
            Runs().Select(run => run.DeclaringType!.Name).Order(StringComparer.Ordinal),
            StartedUseCase.All.Keys.Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Every_use_case_takes_a_request_and_a_run_and_no_request_is_without_one()
    {
        Assert.All(Runs(), run =>
            Assert.EndsWith("Request", Assert.Single(run.GetParameters().SkipLast(1)).ParameterType.Name, StringComparison.Ordinal)
        );
        Assert.Equal(
            typeof(Run)
                .Assembly.GetExportedTypes()
                .Where(type => type.Name.EndsWith("Request", StringComparison.Ordinal))
                .Select(type => type.Name)
                .Order(StringComparer.Ordinal),
            Runs().Select(run => run.GetParameters()[0].ParameterType.Name).Order(StringComparer.Ordinal)
        );
    }

    /// <summary>A use case from its beginning to its end, which is the same whenever it is looked at.</summary>
    private static (Watcher Watcher, int Steps, IReadOnlyList<OutputFile> Files) Whole(string name)
    {
        if (Wholes.TryGetValue(name, out var known))
            return known;
        var watcher = new Watcher();
        var files = StartedUseCase.All[name](new(watcher));
        return Wholes[name] = (watcher, watcher.Seen.Count, files);
    }

    /// <summary>What begins work: whoever is called Run, and whoever takes a run.</summary>
    private static IReadOnlyList<MethodInfo> Runs() =>
        [
            .. typeof(Run)
                .Assembly.GetExportedTypes()
                .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
                .Where(method =>
                    method.Name == "Run"
                    || (
                        method.GetParameters() is [.., { ParameterType: var last }]
                        && last == typeof(Run)
                        && method.DeclaringType != typeof(OutputFolder)
                    )
                ),
        ];
}
