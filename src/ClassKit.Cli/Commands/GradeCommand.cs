using System.CommandLine;
using System.Security.Cryptography;
using ClassKit.Cli.Reporting;
using ClassKit.Grading.Pseudonyms;
using ClassKit.Notes;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit grade</c></summary>
internal static class GradeCommand
{
    public static Command Create(Report report)
    {
        var dealt = GradingOptions.Dealt();
        var returned = GradingOptions.Returned();
        var paper = GradingOptions.Paper();
        var corrections = GradingOptions.Corrections();
        var due = GradingOptions.Due();
        var profile = GradingOptions.Class();
        var earlier = GradingOptions.Earlier();
        var takeOver = GradingOptions.TakeOver();
        var drop = GradingOptions.Drop();
        var to = CommonOptions.Out("grades, feedback and class report");
        var pseudonymous = new Option<bool>("--pseudonymous")
        {
            Description = "Write reports without names; the key to them goes to a folder of its own beside DIR, called DIR-key.",
        };
        var command = new Command(GradeClass.Kind, "Grade returned workbooks: gradebook, feedback a student, class report.")
        {
            dealt,
            returned,
            paper,
            to,
            corrections,
            due,
            profile,
            earlier,
            takeOver,
            drop,
            pseudonymous,
        };
        GradingOptions.RequireWork(command, returned, paper);
        command.Validators.Add(result =>
        {
            if (result.GetValue(takeOver) && result.GetValue(pseudonymous))
                result.AddError("--take-over goes with grades under names, not with --pseudonymous.");
        });
        command.SetAction(parsed =>
            Run(
                report,
                new(parsed.GetRequiredValue(dealt), parsed.GetValue(returned))
                {
                    Paper = parsed.GetValue(paper),
                    Corrections = parsed.GetValue(corrections),
                    Due = parsed.GetValue(due),
                    ClassFile = parsed.GetValue(profile),
                    Graded = parsed.GetRequiredValue(to),
                    Earlier = parsed.GetValue(earlier),
                    TakeOver = parsed.GetValue(takeOver),
                    MayDrop = parsed.GetValue(drop),
                },
                parsed.GetRequiredValue(to),
                parsed.GetValue(pseudonymous)
            )
        );
        return command;
    }

    private static int Run(Report report, GradePaths paths, string to, bool pseudonymous)
    {
        if (!pseudonymous)
            return report.Write(Target(to, GradeClass.Kind), run =>
                Produced.Of(paths.Read(), request => paths.Write(GradeClass.Run(request, run)))
            );

        // Each way has folders of its own kind, so that reports without names never lie among those with.
        const string kind = GradeClass.Kind + " --pseudonymous";
        return report.Write(Target(to, kind), run => Produced.Of((paths with { ReadsGradebook = false }).Read(), request =>
            {
                var keyFolder = Path.TrimEndingDirectorySeparator(to) + "-key";
                var secret = SecretFile.At(keyFolder, RandomNumberGenerator.GetBytes(PseudonymSecret.Bytes));
                if (!secret.Succeeded)
                    return Produced.Nothing(secret.Problems);
                var (reports, key) = GradeClass.Run(request, run).UnderPseudonyms(secret.Model);
                var written = OutputFolder.Write(Target(keyFolder, kind + " key", to), () =>
                    new([GradeFiles.WhoIsWho(key), SecretFile.Of(secret.Model)], [], [])
                );
                if (!written.Succeeded)
                    return Produced.Nothing(written.Problems);
                var produced = paths.Write(reports);
                return produced with { Notes = [.. written.Notes, new Note.KeyApart(DisplayPath.Whole(keyFolder)), .. produced.Notes] };
            }));

        OutputTarget Target(string folder, string ofKind, params IEnumerable<string> others) =>
            new(folder, ofKind, [paths.Dealt, paths.Returned, paths.Paper, paths.ClassFile, paths.Earlier, .. others]);
    }
}
