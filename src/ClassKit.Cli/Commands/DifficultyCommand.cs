using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Difficulty;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit difficulty</c></summary>
internal static class DifficultyCommand
{
    public static Command Create(Report report)
    {
        var lesson = CommonOptions.LessonOrExercises();
        var profile = new Option<string?>("--class")
        {
            Description = "The class profile of the class that they are for: what it can be expected to earn.",
            HelpName = "FILE",
        };
        var to = CommonOptions.Out("a page and a table");
        var (set, past) = (new SetOptions(), new PastOptions());
        var command = new Command(
            ShowDifficulty.Kind,
            "Show how hard exercises proved in earlier classes, and what a class can be expected to earn with them."
        )
        {
            lesson,
            profile,
            to,
        };
        past.AddTo(command);
        set.AddTo(command);
        command.SetAction(parsed =>
            report.Write(
                new(
                    parsed.GetRequiredValue(to),
                    ShowDifficulty.Kind,
                    [.. LessonInputs.Of(parsed.GetRequiredValue(lesson)), parsed.GetValue(profile), .. past.Inputs(parsed)]
                ),
                run =>
                    Produced.Of(
                        ShowDifficulty.Read(
                            parsed.GetRequiredValue(lesson),
                            set.Wish(parsed),
                            past.Paths(parsed),
                            parsed.GetValue(profile)
                        ),
                        request => ShowDifficulty.Write(ShowDifficulty.Run(request, run))
                    )
            )
        );
        return command;
    }
}
