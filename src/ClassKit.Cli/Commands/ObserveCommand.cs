using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit observe</c> and <c>classkit observed</c></summary>
internal static class ObserveCommand
{
    public static Command Create(Report report) =>
        LessonCommand.Of(
            MakeObservationForm.Kind,
            "Make the page that teams type their measurements into, without a network.",
            "the page",
            Profile(),
            report,
            (lesson, profile, run) =>
                Produced.Of(
                    MakeObservationForm.Read(lesson, profile),
                    request => MakeObservationForm.Run(request, run),
                    MakeObservationForm.Write
                )
        );

    public static Command Back(Report report)
    {
        var (lesson, profile, to) = (CommonOptions.Lesson(), Profile(), CommonOptions.Out("the page"));
        var returned = new Option<string>("--returned")
        {
            Description = "The folder or zip with the teams' workbooks and the files that their page saved.",
            HelpName = "DIR-or-ZIP",
            Required = true,
        };
        var path = new Option<string?>("--record")
        {
            Description = "Put what was measured on record too: the file of the record, or the teaching folder that it lies in.",
            HelpName = "PATH",
        };
        var on = CommonOptions.Day(
            "--on",
            "With a record: the day on which the lesson was given; the last one on record, or today, if left out."
        );
        var (by, why) = (RecordOptions.By(), RecordOptions.Why());
        var command = new Command(
            DrawObservations.Kind,
            "Draw what the teams measured on what was predicted: what is far from the rest, what differs, what to ask."
        )
        {
            lesson,
            returned,
            to,
            profile,
            path,
            on,
            by,
            why,
        };
        command.SetAction(parsed =>
        {
            var record = parsed.GetValue(path);
            return report.Write(
                new(
                    parsed.GetRequiredValue(to),
                    DrawObservations.Kind,
                    [
                        .. LessonInputs.Of(parsed.GetRequiredValue(lesson)),
                        parsed.GetValue(profile),
                        parsed.GetRequiredValue(returned),
                        record is null ? null : RecordPlace.Of(record),
                    ]
                ),
                run =>
                    Produced.Of(
                        DrawObservations.Read(parsed.GetRequiredValue(lesson), parsed.GetValue(profile), parsed.GetRequiredValue(returned)),
                        request => DrawObservations.Run(request, run),
                        observed => record is null ? DrawObservations.Write(observed) : Recorded(observed, record, run)
                    )
            );

            Produced Recorded(ObservedMade observed, string record, Run run)
            {
                var author = RecordOptions.Author(parsed, by, why);
                var entered = Produced.Within(RecordPlace.Open(record, author.Now, mayBegin: true), open =>
                    Produced.Of(EnterObservations.Run(new(open, author, observed, parsed.GetValue(on)), run), EnterObservations.Write)
                );
                return entered.Succeeded ? DrawObservations.Write(observed).With(entered.Notes) : entered;
            }
        });
        return command;
    }

    private static Option<string?> Profile() => LessonCommand.Profile("name, teams, units, kitchen");
}
