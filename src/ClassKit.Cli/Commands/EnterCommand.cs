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
        var what = new Argument<string>("WHAT") { Description = "The folder that `classkit grade` made, or the description of a term, such as term.md." };
        var dealt = new Option<string?>("--dealt") { Description = "The folder that `classkit deal` made, for a folder of grades.", HelpName = "DIR" };
        var named = new Option<string?>("--class") { Description = "What the class is called, where neither deal nor term says it.", HelpName = "NAME" };
        var (path, by, why) = (RecordOptions.Record(), RecordOptions.By(), RecordOptions.Why());
        var command = new Command(EnterGrades.Kind, "Put the grades of a class on record with what was dealt, or a term with its works and marks.") { what, dealt, path, named, by, why };
        command.Validators.Add(result =>
        {
            if (result.GetValue(what) is { } folder && Directory.Exists(folder) && result.GetValue(dealt) is null) result.AddError("Name what was dealt with --dealt, such as --dealt my-deal.");
        });
        command.SetAction(parsed => report.Done(run =>
        {
            var author = RecordOptions.Author(parsed, by, why);
            var (entered, called) = (parsed.GetRequiredValue(what), parsed.GetValue(named));
            return Produced.Within(RecordPlace.Open(parsed.GetRequiredValue(path), author.Now, mayBegin: true), record => parsed.GetValue(dealt) is { } deal
                ? Produced.Of(EnterGrades.Read(entered, deal), grades => Produced.Of(EnterGrades.Run(new(record, author, called, grades), run), EnterGrades.Write))
                : Produced.Of(EnterTerm.Read(entered, (plan, deals) => new(record, author, called, plan, deals)), request => Produced.Of(EnterTerm.Run(request, run), EnterTerm.Write)));
        }));
        return command;
    }
}
