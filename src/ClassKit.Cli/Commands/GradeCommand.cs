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
        var profile = GradingOptions.Class();
        var takeOver = GradingOptions.TakeOver();
        var to = CommonOptions.Out("grades, feedback and class report");
        var pseudonymous = new Option<bool>("--pseudonymous") { Description = "Write reports without names; the key to them goes to a folder of its own beside DIR, called DIR-key." };
        var command = new Command(GradeClass.Kind, "Grade returned workbooks: gradebook, feedback a student, class report.") { dealt, returned, to, corrections, due, profile, takeOver, pseudonymous };
        command.Validators.Add(result =>
        {
            if (result.GetValue(takeOver) && result.GetValue(pseudonymous)) result.AddError("--take-over goes with grades under names, not with --pseudonymous.");
        });
        command.SetAction(parsed => Run(
            report, parsed.GetRequiredValue(dealt), parsed.GetRequiredValue(returned), parsed.GetValue(corrections),
            new(parsed.GetValue(due), parsed.GetValue(profile), parsed.GetRequiredValue(to)),
            parsed.GetRequiredValue(to), parsed.GetValue(takeOver), parsed.GetValue(pseudonymous)));
        return command;
    }

    private static int Run(Report report, string dealt, string returned, string? corrections, Deadline due, string to, bool takeOver, bool pseudonymous)
    {
        if (!pseudonymous) return report.Write(new(to, GradeClass.Kind, dealt, returned, due.ClassFile), () => GradeClass.Make(dealt, returned, Corrections(), due, new(to, takeOver)));

        // Each way has folders of its own kind, so that reports without names never lie among those with.
        const string kind = GradeClass.Kind + " --pseudonymous";
        return report.Write(new(to, kind, dealt, returned, due.ClassFile), () =>
        {
            var (reports, key) = GradeClass.MakePseudonymous(dealt, returned, Corrections(), due);
            var keyFolder = Path.TrimEndingDirectorySeparator(to) + "-key";
            var written = OutputFolder.Write(new(keyFolder, kind + " key", dealt, returned, to), () => key);
            return written.Succeeded
                ? reports with { Notes = [.. written.Notes, $"The key is in {DisplayPath.Of(keyFolder)}.", .. reports.Notes] }
                : Produced.Nothing(written.Problems);
        });

        string? Corrections() => corrections ?? GradeClass.CorrectionsIn(to);
    }
}
