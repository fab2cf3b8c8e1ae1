using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit observe</c> and <c>classkit observed</c></summary>
internal static class ObserveCommand
{
    public static Command Create(Report report)
    {
        var (lesson, profile, to) = (CommonOptions.Lesson(), Profile(), CommonOptions.Out("the page"));
        var command = new Command(MakeObservationForm.Kind, "Make the page that teams type their measurements into, without a network.") { lesson, to, profile };
        command.SetAction(parsed => report.Write(
            new(parsed.GetRequiredValue(to), MakeObservationForm.Kind, [.. LessonInputs.Of(parsed.GetRequiredValue(lesson)), parsed.GetValue(profile)]),
            run => Produced.Of(MakeObservationForm.Read(parsed.GetRequiredValue(lesson), parsed.GetValue(profile)), request => MakeObservationForm.Run(request, run), MakeObservationForm.Write)));
        return command;
    }

    public static Command Back(Report report)
    {
        var (lesson, profile, to) = (CommonOptions.Lesson(), Profile(), CommonOptions.Out("the page"));
        var returned = new Option<string>("--returned") { Description = "The folder or zip with the teams' workbooks and the files that their page saved.", HelpName = "DIR-or-ZIP", Required = true };
        var command = new Command(DrawObservations.Kind, "Draw what the teams measured on what was predicted: what is far from the rest, what differs, what to ask.") { lesson, returned, to, profile };
        command.SetAction(parsed => report.Write(
            new(parsed.GetRequiredValue(to), DrawObservations.Kind, [.. LessonInputs.Of(parsed.GetRequiredValue(lesson)), parsed.GetValue(profile), parsed.GetRequiredValue(returned)]),
            run => Produced.Of(
                DrawObservations.Read(parsed.GetRequiredValue(lesson), parsed.GetValue(profile), parsed.GetRequiredValue(returned)), request => DrawObservations.Run(request, run), DrawObservations.Write)));
        return command;
    }

    private static Option<string?> Profile() => new("--class") { Description = "The class profile: name, teams, units, kitchen. A class of 24 in 6 teams if left out.", HelpName = "FILE" };
}
