using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit pack</c></summary>
internal static class PackCommand
{
    public static Command Create(Report report)
    {
        var lesson = CommonOptions.Lesson();
        var to = CommonOptions.Out("the pages");
        var profile = new Option<string?>("--class")
        {
            Description = "The class profile: teams, pieces, scales, kitchen. A class of 24 in 6 teams if left out.",
            HelpName = "FILE",
        };
        var command = new Command(BuildPack.Kind, "Build the lesson pack: handout, guide, formula cards, comparison.")
        {
            lesson,
            to,
            profile,
        };
        command.SetAction(parsed =>
            report.Write(
                new(
                    parsed.GetRequiredValue(to),
                    BuildPack.Kind,
                    [.. LessonInputs.Of(parsed.GetRequiredValue(lesson)), parsed.GetValue(profile)]
                ),
                run =>
                    Produced.Of(
                        BuildPack.Read(parsed.GetRequiredValue(lesson), parsed.GetValue(profile)),
                        request => BuildPack.Run(request, run),
                        PackFiles.Write
                    )
            )
        );
        return command;
    }
}
