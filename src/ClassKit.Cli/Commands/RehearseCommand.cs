using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Rehearsing;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit rehearse</c></summary>
internal static class RehearseCommand
{
    public static Command Create(Report report)
    {
        var lesson = CommonOptions.LessonOrExercises();
        var students = new Option<int>("--students")
        {
            Description = $"How many students to invent, 2 to {RehearseLesson.MostStudents}.",
            HelpName = "N",
            Required = true,
        };
        students.Validators.Add(result =>
        {
            if (
                result.Tokens is [{ Value: var text }]
                && !(
                    int.TryParse(text, System.Globalization.CultureInfo.InvariantCulture, out var count)
                    && count is >= 2 and <= RehearseLesson.MostStudents
                )
            )
                result.AddError($"--students takes a whole number from 2 to {RehearseLesson.MostStudents}, such as --students 40.");
        });
        var to = CommonOptions.Out("the report and everything behind it");
        var seed = CommonOptions.Seed(DealPractice.DefaultSeed);
        var command = new Command(RehearseLesson.Kind, "Let an invented class take the exercises before the real one does.")
        {
            lesson,
            students,
            to,
            seed,
        };
        var set = new SetOptions();
        set.AddWithSpreadTo(command);
        command.SetAction(parsed =>
            report.Write(
                new(parsed.GetRequiredValue(to), RehearseLesson.Kind, [.. LessonInputs.Of(parsed.GetRequiredValue(lesson))]),
                run =>
                    Produced.Of(
                        new RehearsalPaths(
                            parsed.GetRequiredValue(lesson),
                            parsed.GetRequiredValue(students),
                            set.Wish(parsed, parsed.GetValue(seed))
                        ).Read(),
                        request => RehearseLesson.Run(request, run),
                        RehearsalPaths.Write
                    )
            )
        );
        return command;
    }
}
