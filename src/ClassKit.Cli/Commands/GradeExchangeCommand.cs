using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Exporting;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit grade-exchange</c></summary>
internal static class GradeExchangeCommand
{
    public static Command Create(Report report)
    {
        var dealt = GradingOptions.Dealt();
        var grades = new Option<string>("--graded") { Description = "The folder that `classkit grade` made.", HelpName = "DIR", Required = true };
        var to = CommonOptions.Out("manifest.csv, lineItems.csv and results.csv");
        var (ofClass, school, session, category) = (Id("--class", "class"), Id("--school", "school"), Id("--session", "term or grading period"), Id("--category", "kind of work"));
        var (assigned, due, scored) = (Day("--assigned", "the set was handed out"), Day("--due", "it was due"), Day("--scored", "it was graded"));
        var command = new Command(ExportGrades.Kind, "Write grades as tables of the open standard 1EdTech OneRoster 1.2, for a school's records.")
            { dealt, grades, to, ofClass, school, session, category, assigned, due, scored };
        command.SetAction(parsed => report.Write(
            new(parsed.GetRequiredValue(to), ExportGrades.Kind, parsed.GetRequiredValue(dealt), parsed.GetRequiredValue(grades)),
            run => Produced.Of(ExportGrades.Read(parsed.GetRequiredValue(dealt), parsed.GetRequiredValue(grades), new(
                parsed.GetRequiredValue(ofClass), parsed.GetRequiredValue(school), parsed.GetRequiredValue(session), parsed.GetRequiredValue(category),
                parsed.GetRequiredValue(assigned), parsed.GetRequiredValue(due), parsed.GetRequiredValue(scored))), request => ExportGrades.Run(request, run), ExportGrades.Write)));
        return command;
    }

    private static Option<string> Id(string name, string what) => new(name) { Description = $"The school's id (sourcedId) of the {what}.", HelpName = "ID", Required = true };

    private static Option<DateOnly> Day(string name, string what) => new(name)
    {
        Description = $"The day on which {what}.",
        HelpName = "YYYY-MM-DD",
        Required = true,
        CustomParser = result => Parse(name, result),
    };

    private static DateOnly Parse(string name, ArgumentResult result)
    {
        if (result.Tokens is [{ Value: var text }] && DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
        result.AddError($"{name} takes a day as YYYY-MM-DD, such as {name} 2026-11-25.");
        return default;
    }
}
