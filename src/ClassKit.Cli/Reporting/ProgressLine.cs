using System.Globalization;
using ClassKit.UseCases.Running;

namespace ClassKit.Cli.Reporting;

/// <summary>
/// One line of a terminal that says what a command is at, once it has been silent for half a second; taken away at the end.
/// </summary>
internal sealed class ProgressLine : IProgress<RunProgress>, IDisposable
{
    /// <summary>What takes less time needs no words.</summary>
    public static readonly TimeSpan Silence = TimeSpan.FromSeconds(0.5);

    private static readonly TimeSpan Between = TimeSpan.FromSeconds(0.1);

    private readonly TextWriter _terminal;
    private readonly Lock _writing = new();
    private readonly ITimer _timer;
    private RunProgress? _latest;
    private string _shown = "";
    private bool _isOver;

    public ProgressLine(TextWriter terminal, TimeProvider clock)
    {
        _terminal = terminal;
        _timer = clock.CreateTimer(_ => Show(), null, Silence, Between);
    }

    public void Report(RunProgress value)
    {
        lock (_writing)
            _latest = value;
    }

    public void Dispose()
    {
        _timer.Dispose();
        lock (_writing)
        {
            _isOver = true;
            Replace("");
        }
    }

    private void Show()
    {
        lock (_writing)
        {
            if (!_isOver && _latest is { } progress)
                Replace(Words(progress));
        }
    }

    /// <summary>Writes over what is shown, without leaving the line.</summary>
    private void Replace(string text)
    {
        if (text == _shown)
            return;
        _terminal.Write($"\r{text.PadRight(_shown.Length)}\r{text}");
        _terminal.Flush();
        _shown = text;
    }

    private static string Words(RunProgress progress)
    {
        var what = progress.Step switch
        {
            RunStep.ReadingContent => "Reading content",
            RunStep.ProvingExercises => "Drawing exercises on trial",
            RunStep.PlanningBenches => "Planning the benches",
            RunStep.DrawingVariants => "Drawing everybody's numbers",
            RunStep.Reckoning => "Working it out",
            RunStep.Recomputing => "Computing formulas anew",
            RunStep.Tabulating => "Putting grades into tables",
            RunStep.Recording => "Writing in the record",
            RunStep.Weighing => "Weighing marks",
            RunStep.FillingIn => "Filling in workbooks",
            RunStep.Judging => "Judging what came back",
            RunStep.LayingOut => "Laying out what to mark on",
            RunStep.MakingFiles => "Making files",
        };
        return progress.Total is { } total ? string.Create(CultureInfo.InvariantCulture, $"{what}: {progress.Done} of {total}") : what;
    }
}
