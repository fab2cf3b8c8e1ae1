using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Practising;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit practice</c></summary>
internal static class PracticeCommand
{
    public static Command Create(Report report)
    {
        var lesson = CommonOptions.LessonOrExercises();
        var roster = new Option<string?>("--roster")
        {
            Description =
                "The students, .xlsx, .ods or CSV with names: a page each, with numbers of their own. Without it one page is made for anyone.",
            HelpName = "FILE",
        };
        var apartFrom = new Option<string?>("--apart-from")
        {
            Description = "A folder that `classkit deal` made: none of its numbers come up in the practice.",
            HelpName = "DEALT",
        };
        var to = CommonOptions.Out("the pages");
        var seed = CommonOptions.Seed(DealPractice.DefaultSeed);
        var set = new SetOptions();
        var command = new Command(MakePractice.Kind, "Make pages for practice that check answers by themselves, without a network.")
        {
            lesson,
            to,
            roster,
            apartFrom,
            seed,
        };
        set.AddTo(command);
        command.SetAction(parsed =>
            report.Write(
                new(
                    parsed.GetRequiredValue(to),
                    MakePractice.Kind,
                    [.. LessonInputs.Of(parsed.GetRequiredValue(lesson)), parsed.GetValue(roster), parsed.GetValue(apartFrom)]
                ),
                run =>
                    Produced.Of(
                        new PracticePaths(parsed.GetRequiredValue(lesson), set.Wish(parsed), parsed.GetValue(seed))
                        {
                            Roster = parsed.GetValue(roster),
                            ApartFrom = parsed.GetValue(apartFrom),
                        }.Read(),
                        request => MakePractice.Run(request, run),
                        PracticePaths.Write
                    )
            )
        );
        return command;
    }
}
