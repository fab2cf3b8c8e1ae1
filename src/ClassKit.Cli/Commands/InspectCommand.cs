using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Inspecting;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit inspect</c></summary>
internal static class InspectCommand
{
    public static Command Create(Report report)
    {
        var workbook = new Argument<string>("WORKBOOK") { Description = "Any .xlsx file." };
        var json = new Option<bool>("--json") { Description = "Print everything as JSON." };
        var command = new Command("inspect", "Show what the grader sees in a workbook: formulas, stored and recomputed values.")
        {
            workbook,
            json,
        };
        command.SetAction(parsed => Run(report, parsed.GetRequiredValue(workbook), parsed.GetValue(json)));
        return command;
    }

    private static int Run(Report report, string workbook, bool json)
    {
        var file = InspectWorkbook.At(workbook);
        var inspection = file.Succeeded ? report.Watch(run => InspectWorkbook.Run(file.Model, run)) : new(null, file.Problems);
        if (!inspection.Succeeded)
            return report.Problems(inspection.Problems);
        if (json)
            report.Data.Write(InspectionJson.Write(inspection.Model));
        else
            InspectionTable.Write(report.Output, inspection.Model);
        return ExitCode.Done;
    }
}
