using System.CommandLine;
using ClassKit.UseCases;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit grade</c></summary>
internal static class GradeCommand
{
    public static Command Create(Report report)
    {
        var dealt = GradingOptions.Dealt();
        var returned = GradingOptions.Returned();
        var corrections = GradingOptions.Corrections();
        var due = GradingOptions.Due();
        var to = CommonOptions.Out("grades, feedback and class report");
        var pseudonymous = new Option<bool>("--pseudonymous") { Description = "Write reports without names; the key to them goes to a folder of its own beside DIR, called DIR-key." };
        var command = new Command(GradeClass.Kind, "Grade returned workbooks: gradebook, feedback a student, class report.") { dealt, returned, to, corrections, due, pseudonymous };
        command.SetAction(parsed => Run(
            report, parsed.GetRequiredValue(dealt), parsed.GetRequiredValue(returned),
            parsed.GetValue(corrections) ?? GradeClass.CorrectionsIn(parsed.GetRequiredValue(to)), parsed.GetValue(due), parsed.GetRequiredValue(to), parsed.GetValue(pseudonymous)));
        return command;
    }

    private static int Run(Report report, string dealt, string returned, string? corrections, DateTimeOffset? due, string to, bool pseudonymous)
    {
        if (!pseudonymous) return report.Write(to, GradeClass.Kind, GradeClass.Make(dealt, returned, corrections, due));

        // Each way has folders of its own kind, so that reports without names never lie among those with.
        const string kind = GradeClass.Kind + " --pseudonymous";
        var (reports, key) = GradeClass.MakePseudonymous(dealt, returned, corrections, due);
        var written = report.Write(Path.TrimEndingDirectorySeparator(to) + "-key", kind + " key", key);
        return written == ExitCode.Done ? report.Write(to, kind, reports) : written;
    }
}
