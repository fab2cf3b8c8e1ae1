using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Exporting;
using ClassKit.UseCases.Output;
using static ClassKit.Cli.Commands.ExchangeOptions;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit grade-exchange</c></summary>
internal static class GradeExchangeCommand
{
    public static Command Create(Report report)
    {
        var dealt = GradingOptions.Dealt();
        var grades = new Option<string>("--graded")
        {
            Description = "The folder that `classkit grade` made.",
            HelpName = "DIR",
            Required = true,
        };
        var to = CommonOptions.Out("manifest.csv, lineItems.csv and results.csv");
        var (ofClass, school, session, category) = (
            Id("--class", "class"),
            Id("--school", "school"),
            Id("--session", "term or grading period"),
            Id("--category", "kind of work")
        );
        var (assigned, due, scored) = (
            Day("--assigned", "The day on which the set was handed out."),
            Day("--due", "The day on which it was due."),
            Day("--scored", "The day on which it was graded.")
        );
        var command = new Command(
            ExportGrades.Kind,
            "Write grades as tables of the open standard 1EdTech OneRoster 1.2, for a school's records."
        )
        {
            dealt,
            grades,
            to,
            ofClass,
            school,
            session,
            category,
            assigned,
            due,
            scored,
        };
        command.SetAction(parsed =>
            report.Write(
                new(parsed.GetRequiredValue(to), ExportGrades.Kind, parsed.GetRequiredValue(dealt), parsed.GetRequiredValue(grades)),
                run =>
                    Produced.Of(
                        ExportGrades.Read(
                            parsed.GetRequiredValue(dealt),
                            parsed.GetRequiredValue(grades),
                            new(
                                parsed.GetRequiredValue(ofClass),
                                parsed.GetRequiredValue(school),
                                parsed.GetRequiredValue(session),
                                parsed.GetRequiredValue(category),
                                parsed.GetRequiredValue(assigned),
                                parsed.GetRequiredValue(due),
                                parsed.GetRequiredValue(scored)
                            )
                        ),
                        request => ExportGrades.Run(request, run),
                        ExportGrades.Write
                    )
            )
        );
        return command;
    }
}
