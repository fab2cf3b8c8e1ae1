using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>Several files of a folder are made at once, but not those that are read from something that only one can read.</summary>
public sealed class MadeAtOnceTests : IDisposable
{
    private readonly OutputSample _sample = new();
    private readonly Lock _counting = new();
    private int _atWork;
    private int _most;

    public void Dispose() => _sample.Dispose();

    [Fact]
    public void Each_has_what_is_its_own()
    {
        Assert.True(OutputFolder.Write(_sample.Out, OutputSample.Kind, Files()).Succeeded);

        Assert.Equal(Enumerable.Range(10, 40).Select(number => $"{number}.html={number}"), _sample.Content());
        Assert.InRange(_most, 1, 4);
    }

    [Fact]
    public void In_turn_no_two_are_being_made()
    {
        OutputTarget target = new(_sample.Out, OutputSample.Kind);

        Assert.True(OutputFolder.Write(target, () => new(Files(), [], []) { IsMadeInTurn = true }).Succeeded);

        Assert.Equal(40, _sample.Content().Count());
        Assert.Equal(1, _most);
    }

    /// <summary>Each large one is in memory as a whole: two of them at once take twice as much of it.</summary>
    [Fact]
    public void No_two_large_ones_are_being_made_while_others_are()
    {
        OutputFile[] files =
        [
            .. Files(isLarge: true),
            .. Enumerable.Range(50, 40).Select(number => OutputFile.OfText($"{number}.html", () => $"{number}")),
        ];

        Assert.True(OutputFolder.Write(_sample.Out, OutputSample.Kind, [.. files.Select(file => file.Below("a"))]).Succeeded);

        Assert.Equal(
            Enumerable.Range(10, 80).Select(number => $"a/{number}.html={number}"),
            _sample.Content().Select(one => one.Replace('\\', '/'))
        );
        Assert.Equal(1, _most);
    }

    [Fact]
    public void What_goes_wrong_in_several_is_said_once_and_as_it_is()
    {
        OutputFile broken = new("full.html", _ => throw new IOException("No space left on device"));

        var written = OutputFolder.Write(_sample.Out, OutputSample.Kind, [broken, broken.Below("a"), broken.Below("b"), broken.Below("c")]);

        Assert.EndsWith("No space left on device", Assert.Single(written.Problems).Found, StringComparison.Ordinal);
    }

    private IReadOnlyList<OutputFile> Files(bool isLarge = false) =>
        [
            .. Enumerable
                .Range(10, 40)
                .Select(number => new OutputFile($"{number}.html", stream =>
                {
                    lock (_counting)
                        _most = Math.Max(_most, ++_atWork);
                    Thread.Sleep(1);
                    stream.Write(System.Text.Encoding.UTF8.GetBytes($"{number}"));
                    lock (_counting)
                        _atWork--;
                }) { IsLarge = isLarge }),
        ];
}
