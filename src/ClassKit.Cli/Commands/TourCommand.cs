using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Touring;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit tour</c></summary>
internal static class TourCommand
{
    public static Command Create(Report report)
    {
        var to = new Option<string?>("--out") { Description = "The folder to write to; .artifacts/tour in the checkout if left out.", HelpName = "DIR" };
        var command = new Command(TakeTour.Kind, "Do the whole job on the invented demo class: lesson pack, practice workbooks, grades.") { to };
        command.SetAction(parsed => Run(report, parsed.GetValue(to)));
        return command;
    }

    private static int Run(Report report, string? to)
    {
        if (DemoMaterial.Find(Environment.CurrentDirectory, AppContext.BaseDirectory) is not { } demo)
            return report.Problems([new Diagnostic(Environment.CurrentDirectory, null, "There is no demo-cohort folder here or above", "Run the tour inside a checkout of ClassKit.")]);

        var folder = to ?? Path.Combine(demo.Root, ".artifacts", "tour");
        var exit = report.Write(new(folder, TakeTour.Kind, [.. LessonInputs.Of(demo.Lesson), demo.Class, demo.Roster, demo.Returned, demo.Corrections]), run => Produced.Of(demo.Read(), request => TakeTour.Run(request, run), TakeTour.Write));
        if (exit != ExitCode.Done) return exit;
        report.Output.WriteLine("\nOpen these three first:");
        foreach (var (file, what) in TakeTour.OpenFirst)
            report.Output.WriteLine($"  {Path.GetFullPath(Path.Combine(folder, file))}\n      {what}");
        return exit;
    }
}
