using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Touring;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit tour</c></summary>
internal static class TourCommand
{
    public static Command Create(Report report)
    {
        var to = new Option<string?>("--out")
        {
            Description = "The folder to write to; .artifacts/tour in a checkout, else classkit-tour here, if left out.",
            HelpName = "DIR",
        };
        var command = new Command(
            TakeTour.Kind,
            "Do the whole job on the invented demo class: lesson pack, practice workbooks, grades, and a term of them."
        )
        {
            to,
        };
        command.SetAction(parsed => Run(report, parsed.GetValue(to)));
        return command;
    }

    private static int Run(Report report, string? to)
    {
        var checkout = DemoMaterial.Find(Environment.CurrentDirectory, AppContext.BaseDirectory);
        var demo = checkout ?? DemoMaterial.Shipped;
        var folder = to
            ?? (
                checkout is null
                    ? Path.Combine(Environment.CurrentDirectory, "classkit-tour")
                    : Path.Combine(checkout.Root, ".artifacts", "tour")
            );
        var exit = report.Write(
            new(
                folder,
                TakeTour.Kind,
                [.. LessonInputs.Of(demo.Lesson), demo.Class, demo.Roster, demo.Returned, demo.Corrections, demo.TermFolder]
            ),
            run => Produced.Of(demo.Read(), request => TakeTour.Run(request, run), TakeTour.Write)
        );
        if (exit != ExitCode.Done)
            return exit;
        report.Output.WriteLine("\nOpen these first:");
        foreach (var (file, what) in TakeTour.OpenFirst)
            report.Output.WriteLine($"  {Path.GetFullPath(Path.Combine(folder, file))}\n      {what}");
        return exit;
    }
}
