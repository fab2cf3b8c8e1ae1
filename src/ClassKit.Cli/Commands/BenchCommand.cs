using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.BenchMarks;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit bench</c></summary>
internal static class BenchCommand
{
    public static Command Create(Report report)
    {
        var rubric = new Argument<string>("RUBRIC") { Description = "A practical rubric, such as rubrics/bench-work.md." };
        var profile = new Option<string>("--class")
        {
            Description = "The class profile, for the class's name and its teams.",
            HelpName = "FILE",
            Required = true,
        };
        var roster = new Option<string?>("--roster")
        {
            Description = "The students; the list that the class profile names if left out.",
            HelpName = "FILE",
        };
        var to = CommonOptions.Out("page and workbook");
        var command = new Command(
            MakeBenchForm.Kind,
            "Make what bench work is marked on: a page for the kitchen that needs no network, and a workbook."
        )
        {
            rubric,
            profile,
            roster,
            to,
        };
        command.SetAction(parsed =>
        {
            var (what, who, list) = (parsed.GetRequiredValue(rubric), parsed.GetRequiredValue(profile), parsed.GetValue(roster));
            return report.Write(new(parsed.GetRequiredValue(to), MakeBenchForm.Kind, what, who, list), run =>
                Produced.Of(MakeBenchForm.Read(what, who, list), request => MakeBenchForm.Write(MakeBenchForm.Run(request, run)))
            );
        });
        return command;
    }
}
