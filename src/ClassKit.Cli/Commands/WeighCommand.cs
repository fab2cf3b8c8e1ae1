using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Terms;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit weigh</c></summary>
internal static class WeighCommand
{
    public static Command Create(Report report)
    {
        var term = new Argument<string>("TERM") { Description = "The description of a term, such as demo-cohort/term/term.md." };
        var to = CommonOptions.Out("the class's report, a page a student and the workbook");
        var path = new Option<string?>("--record")
        {
            Description =
                "Take the marks from this record, or from that of this teaching folder, and not from the files that the term names.",
            HelpName = "PATH",
        };
        var named = new Option<string?>("--class")
        {
            Description = "With a record: what the class is called, where the term does not say it.",
            HelpName = "NAME",
        };
        var command = new Command(WeighTerm.Kind, "Weigh the marks of a term into grades, every step shown.") { term, to, path, named };
        command.SetAction(parsed =>
        {
            var (file, record) = (parsed.GetRequiredValue(term), parsed.GetValue(path));
            return report.Write(
                new(
                    parsed.GetRequiredValue(to),
                    WeighTerm.Kind,
                    [.. WeighTerm.Inputs(file), record is null ? null : RecordPlace.Of(record)]
                ),
                run =>
                    record is null
                        ? Produced.Of(WeighTerm.Read(file), request => Weigh(request, run))
                        : Produced.Within(RecordPlace.Open(record, RecordOptions.Now, mayBegin: false), open =>
                            Produced.Of(TermOnRecord.Read(file, open, parsed.GetValue(named)), request => Weigh(request, run))
                        )
            );
        });
        return command;
    }

    private static Produced Weigh(WeighRequest request, Run run) => WeighTerm.Write(WeighTerm.Run(request, run));
}
