using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Handing;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit hand-over</c></summary>
internal static class HandOverCommand
{
    public static Command Create(Report report)
    {
        var lesson = CommonOptions.Lesson();
        var prices = new Option<string?>("--prices") { Description = "A price list to put in as well.", HelpName = "FILE" };
        var to = CommonOptions.Out("the bundle");
        var command = new Command(
            HandOverLesson.Kind,
            "Make one file of a lesson and all that it leads to, for a colleague, a substitute or next year."
        )
        {
            lesson,
            prices,
            to,
        };
        command.SetAction(parsed =>
            report.Write(
                new(
                    parsed.GetRequiredValue(to),
                    HandOverLesson.Kind,
                    [.. LessonInputs.Of(parsed.GetRequiredValue(lesson)), parsed.GetValue(prices)]
                ),
                run =>
                    Produced.Of(
                        HandOverLesson.Run(new(Source.Named(parsed.GetRequiredValue(lesson)), parsed.GetValue(prices)), run),
                        HandOverLesson.Write
                    )
            )
        );
        return command;
    }
}
