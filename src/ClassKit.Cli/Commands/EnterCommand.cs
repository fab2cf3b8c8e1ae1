using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit enter</c></summary>
internal static class EnterCommand
{
    public static Command Create(Report report)
    {
        var graded = new Argument<string>("GRADED") { Description = "The folder that `classkit grade` made." };
        var dealt = new Option<string>("--dealt") { Description = "The folder that `classkit deal` made.", HelpName = "DIR", Required = true };
        var named = new Option<string?>("--class") { Description = "What the class is called, where the deal does not say.", HelpName = "NAME" };
        var (path, by, why) = (RecordOptions.Record(), RecordOptions.By(), RecordOptions.Why());
        var command = new Command(EnterGrades.Kind, "Put the grades of a class on record, with its students and what was dealt to them.") { graded, dealt, path, named, by, why };
        command.SetAction(parsed => report.Done(run =>
        {
            var author = RecordOptions.Author(parsed, by, why);
            return Produced.Of(EnterGrades.Read(parsed.GetRequiredValue(graded), parsed.GetRequiredValue(dealt)), grades =>
                Produced.Within(RecordPlace.Open(parsed.GetRequiredValue(path), author.Now, mayBegin: true), record =>
                    Produced.Of(EnterGrades.Run(new(record, author, parsed.GetValue(named), grades), run), EnterGrades.Write)));
        }));
        return command;
    }
}
