using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>One run at a time writes to a folder; the other one is told who.</summary>
public sealed class OneWriterTests : IDisposable
{
    private readonly OutputSample _sample = new();

    public void Dispose() => _sample.Dispose();

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_second_run_says_who_is_writing_and_ends(bool isThere)
    {
        if (isThere)
            _sample.WriteOld();
        Written? second = null;

        var first = OutputFolder.Write(new OutputTarget(_sample.Out, OutputSample.Kind), () =>
        {
            second = OutputFolder.Write(_sample.Out, OutputSample.Kind, OutputSample.Old);
            return new(OutputSample.New, [], []);
        });

        Assert.True(first.Succeeded);
        Assert.Matches(
            $@"`grade` \(process {Environment.ProcessId}\), begun at \d\d:\d\d:\d\d, is writing to this folder",
            Assert.Single(second!.Problems).ToString()
        );
        Assert.Equal(["feedback/ben.html=new", "grades.csv=new"], _sample.Content());
        Assert.Equal(["out"], _sample.Beside());
    }

    [Fact]
    public void What_a_killed_run_left_locks_nobody_out()
    {
        _sample.WriteOld();
        new WorkFolder(_sample.Out).Begin("grade");

        _sample.WriteNew();

        Assert.Equal(["feedback/ben.html=new", "grades.csv=new"], _sample.Content());
    }

    [Fact]
    public void Who_reads_while_files_are_put_in_place_is_told_to_wait()
    {
        _sample.WriteOld();
        _sample.Folder.Write("out/.classkit-work/journal", "{}"u8.ToArray());
        using (WriterLock.TryTake(_sample.Out))
        {
            Assert.Contains("Wait until it is done", OutputFolder.Settle(_sample.Out)!.ToString(), StringComparison.Ordinal);
        }
    }
}
