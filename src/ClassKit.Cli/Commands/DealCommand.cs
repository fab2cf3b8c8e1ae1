using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit deal</c></summary>
internal static class DealCommand
{
    public static Command Create(Report report)
    {
        var lesson = CommonOptions.LessonOrExercises();
        var roster = new Option<string?>("--roster")
        {
            Description =
                "The students: .xlsx, .ods or CSV with names, and ids if there are any; the list that the class profile names if left out.",
            HelpName = "FILE",
        };
        var profile = new Option<string?>("--class")
        {
            Description = "The class profile: the class's name and its time zone go into what is dealt.",
            HelpName = "FILE",
        };
        var to = CommonOptions.Out("workbooks, key and dealt.json");
        var seed = CommonOptions.Seed(DealPractice.DefaultSeed);
        var due = GradingOptions.DueWhenDealt();
        var oneSheet = new Option<bool>("--one-sheet")
        {
            Description = "All exercises below one another on one sheet of the workbook, in place of a sheet each.",
        };
        var resit = new Option<string?>("--resit-of")
        {
            Description =
                "The folder of the deal that is sat again: of the same exercises, unless others are asked for, everybody gets other numbers, and everything says what it is a resit of.",
            HelpName = "DIR",
        };
        var only = new Option<string[]>("--only")
        {
            Description = "Deal to this student of the roster alone; may be given several times.",
            HelpName = "ID",
        };
        var set = new SetOptions();
        var command = new Command(
            DealPractice.Kind,
            "Make every student a practice workbook with numbers of their own, and the answer key."
        )
        {
            lesson,
            roster,
            profile,
            to,
            seed,
            due,
            oneSheet,
            resit,
            only,
        };
        set.AddWithSpreadTo(command);
        var past = new PastOptions();
        past.AddTo(command);
        command.SetAction(parsed =>
            report.Write(
                new(
                    parsed.GetRequiredValue(to),
                    DealPractice.Kind,
                    [
                        .. LessonInputs.Of(parsed.GetRequiredValue(lesson)),
                        parsed.GetValue(roster),
                        parsed.GetValue(profile),
                        parsed.GetValue(resit),
                        .. past.Inputs(parsed),
                    ]
                ),
                run =>
                    Produced.Of(
                        new DealPaths(
                            parsed.GetRequiredValue(lesson),
                            parsed.GetValue(roster),
                            set.Wish(parsed, parsed.GetValue(seed)) with
                            {
                                Due = parsed.GetValue(due),
                                OneSheet = parsed.GetValue(oneSheet),
                            }
                        )
                        {
                            ClassFile = parsed.GetValue(profile),
                            Past = past.Reader(parsed),
                            Into = parsed.GetRequiredValue(to),
                            ResitOf = parsed.GetValue(resit),
                            Only = parsed.GetValue(only) ?? [],
                        }.Read(),
                        request => DealPractice.Run(request, run),
                        DealPaths.Write
                    )
            )
        );
        return command;
    }
}
