using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.Notes;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit freeze</c></summary>
internal static class FreezeCommand
{
    public static Command Create(Report report)
    {
        var term = new Argument<string>("TERM")
        {
            Description = "The description of a term that is on record, such as demo-cohort/term/term.md.",
        };
        var named = new Option<string?>("--class")
        {
            Description = "What the class is called, where the term does not say it.",
            HelpName = "NAME",
        };
        var (path, by, why) = (RecordOptions.Record(), RecordOptions.By(), RecordOptions.Why());
        var write = new Option<bool>("--write") { Description = "Freeze; without it you are only told who would change." };
        var command = new Command(
            FreezeTerm.Kind,
            "Keep the grades of a term on record as they are given out; a later change says first who would change, and why."
        )
        {
            term,
            named,
            path,
            by,
            why,
            write,
        };
        command.SetAction(parsed =>
        {
            return parsed.GetValue(write)
                ? report.Done(Make)
                : report.Only(Make, "Nothing was frozen yet; add --write to do it.", note => note is Note.Frozen { Number: null });

            Produced Make(Run run)
            {
                var author = RecordOptions.Author(parsed, by, why);
                return Produced.Within(RecordPlace.Open(parsed.GetRequiredValue(path), author.Now, mayBegin: false), record =>
                    Produced.Of(TermOnRecord.Read(parsed.GetRequiredValue(term), record, parsed.GetValue(named)), request =>
                        Produced.Of(
                            FreezeTerm.Run(
                                new(
                                    record,
                                    author,
                                    parsed.GetValue(named) ?? request.Term.Class.Cohort,
                                    request.Term,
                                    parsed.GetValue(write)
                                ),
                                run
                            ),
                            FreezeTerm.Write
                        )
                    )
                );
            }
        });
        return command;
    }
}
