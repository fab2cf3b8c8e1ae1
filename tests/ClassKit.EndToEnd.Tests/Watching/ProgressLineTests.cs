using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Running;

namespace ClassKit.EndToEnd.Tests.Watching;

public sealed class ProgressLineTests : IDisposable
{
    private readonly HandClock _clock = new();
    private readonly StringWriter _terminal = new();

    public void Dispose() => _terminal.Dispose();

    [Fact]
    public void Nothing_is_shown_for_half_a_second_and_then_the_latest()
    {
        using var line = new ProgressLine(_terminal, _clock);
        line.Report(new(RunStep.Judging, 1, 24));
        _clock.Advance(TimeSpan.FromSeconds(0.49));
        Assert.Empty(_terminal.ToString());

        line.Report(new(RunStep.Judging, 12, 24));
        _clock.Advance(TimeSpan.FromSeconds(0.01));
        Assert.EndsWith("\rJudging what came back: 12 of 24", _terminal.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_written_over_by_shorter_words_and_gone_at_the_end()
    {
        using (var line = new ProgressLine(_terminal, _clock))
        {
            line.Report(new(RunStep.Judging, 24, 24));
            _clock.Advance(ProgressLine.Silence);
            line.Report(new(RunStep.PlanningBenches, 0, null));
            _clock.Advance(ProgressLine.Silence);
        }

        Assert.Equal("", Screen(_terminal.ToString()));
        Assert.DoesNotContain('\n', _terminal.ToString());
    }

    [Fact]
    public void Every_step_has_words_of_its_own()
    {
        var words = Enum.GetValues<RunStep>()
            .Select(step =>
            {
                using var terminal = new StringWriter();
                var line = new ProgressLine(terminal, _clock);
                line.Report(new(step, 0, null));
                _clock.Advance(ProgressLine.Silence);
                return terminal.ToString().Trim();
            })
            .ToList();
        Assert.Equal(words.Count, words.Where(word => word.Length > 0).Distinct().Count());
    }

    /// <summary>
    /// What a terminal shows after the characters: a return goes to the beginning of the line, whatever comes is written over what was.
    /// </summary>
    private static string Screen(string written)
    {
        var shown = new List<char>();
        var at = 0;
        foreach (var character in written)
        {
            if (character == '\r')
                at = 0;
            else if (at == shown.Count)
                shown.Insert(at++, character);
            else
                shown[at++] = character;
        }
        return new string([.. shown]).TrimEnd();
    }
}
