using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.BenchMarks;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit compare</c></summary>
internal static class CompareCommand
{
    public static Command Create(Report report)
    {
        var rubric = new Argument<string>("RUBRIC") { Description = "The practical rubric that both marked with." };
        var profile = Required("--class", "The class profile, for the class's name and its teams.");
        var roster = Required("--roster", "The students.");
        var first = Required("--first", "What the first marker saw: the file that the page saved, the workbook, or a table.");
        var second = Required("--second", "What the second marker saw.");
        var to = CommonOptions.Out("the page");
        var command = new Command(CompareMarkers.Kind, "Compare what two markers saw of the same bench work, before the marks count.")
        {
            rubric,
            profile,
            roster,
            first,
            second,
            to,
        };
        command.SetAction(parsed =>
        {
            string[] inputs =
            [
                parsed.GetRequiredValue(rubric),
                parsed.GetRequiredValue(profile),
                parsed.GetRequiredValue(roster),
                parsed.GetRequiredValue(first),
                parsed.GetRequiredValue(second),
            ];
            return report.Write(new(parsed.GetRequiredValue(to), CompareMarkers.Kind, inputs), run =>
                Produced.Of(CompareMarkers.Read(inputs[0], inputs[1], inputs[2], inputs[3], inputs[4]), request =>
                    CompareMarkers.Write(CompareMarkers.Run(request, run))
                )
            );
        });
        return command;
    }

    private static Option<string> Required(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "FILE",
            Required = true,
        };
}
