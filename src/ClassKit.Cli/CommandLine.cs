using System.CommandLine;
using ClassKit.Cli.Commands;
using ClassKit.Cli.Reporting;

namespace ClassKit.Cli;

/// <summary>The <c>classkit</c> command line: which commands there are, and what comes of running one.</summary>
public static class CommandLine
{
    /// <summary>Runs one command.</summary>
    /// <param name="arguments">As typed.</param>
    /// <param name="output">Where results go.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="terminal">Where progress is shown; null if nobody looks on.</param>
    /// <param name="width">Where lines are broken; null for nowhere.</param>
    /// <param name="cancellation">Stops the command, all or nothing of whose files are in place then.</param>
    /// <returns>The exit code.</returns>
    public static int Run(
        IReadOnlyList<string> arguments,
        TextWriter output,
        TextWriter problems,
        TextWriter? terminal = null,
        TerminalWidth? width = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(problems);
        width ??= TerminalWidth.None;
        using var shown = new VisibleWriter(TerminalWidth.Fold(output, width.Output));
        using var wrong = new VisibleWriter(TerminalWidth.Fold(problems, width.Problems));
        try
        {
            return Run(arguments, new(shown, wrong, output, new(terminal, cancellation)), cancellation);
        }
        finally
        {
            shown.Flush();
            wrong.Flush();
        }
    }

    private static int Run(IReadOnlyList<string> arguments, Report report, CancellationToken cancellation)
    {
        var parsed = Root(report).Parse(arguments);
        if (MistypedLines.Of(parsed, arguments) is { Count: > 0 } mistyped)
        {
            foreach (var line in mistyped)
                report.Errors.WriteLine(line);
            return ExitCode.WrongUsage;
        }
        try
        {
            return parsed.Invoke(
                new()
                {
                    Output = report.Output,
                    Error = report.Errors,
                    EnableDefaultExceptionHandler = false,
                }
            );
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            report.Errors.WriteLine("Stopped. What was there before is as it was.");
            return ExitCode.Stopped;
        }
#pragma warning disable CA1031 // The last resort: whatever went wrong is our bug, and the user learns so in one message.
        catch (Exception bug)
#pragma warning restore CA1031
        {
            report.Errors.WriteLine(
                $"classkit has a bug, sorry. An output folder holds all that was there before or all that was made now. Please report this:\n{bug}"
            );
            return ExitCode.OurError;
        }
    }

    private static RootCommand Root(Report report) =>
        new("Teach how breads rise: prepare the lesson, deal practice, grade what comes back.")
        {
            DeskCommand.Create(report),
            TourCommand.Create(report),
            BeginCommand.Create(report),
            HandOverCommand.Create(report),
            ReceiveCommand.Create(report),
            PackCommand.Create(report),
            DealCommand.Create(report),
            PracticeCommand.Create(report),
            FollowUpCommand.Create(report),
            PaperCommand.Create(report),
            GradeCommand.Create(report),
            RegradeCommand.Create(report),
            GradeExchangeCommand.Create(report),
            ObserveCommand.Create(report),
            ObserveCommand.Back(report),
            BenchCommand.Create(report),
            CompareCommand.Create(report),
            SkillsCommand.Create(report),
            DifficultyCommand.Create(report),
            WeighCommand.Create(report),
            TermExchangeCommand.Create(report),
            EnterCommand.Create(report),
            FreezeCommand.Create(report),
            ShowCommand.Create(report),
            EraseCommand.Create(report),
            BackUpCommand.Create(report),
            KeepInCommand.Create(report),
            WriteOutCommand.Create(report),
            ReadBackCommand.Create(report),
            CheckCommand.Create(report),
            InspectCommand.Create(report),
            ReckonCommand.Create(report),
            RehearseCommand.Create(report),
            LearnCommand.Create(report),
            ItemBankCommand.Create(report),
        };
}
