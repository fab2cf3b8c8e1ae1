using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit pack</c></summary>
internal static class PackCommand
{
    public static Command Create(Report report) =>
        LessonCommand.Of(
            BuildPack.Kind,
            "Build the lesson pack: handout, guide, formula cards, comparison.",
            "the pages",
            LessonCommand.Profile("teams, pieces, scales, kitchen"),
            report,
            (lesson, profile, run) => Produced.Of(BuildPack.Read(lesson, profile), request => BuildPack.Run(request, run), PackFiles.Write)
        );
}
