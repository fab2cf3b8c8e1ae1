using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Exporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Terms;
using static ClassKit.Cli.Commands.ExchangeOptions;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit term-exchange</c></summary>
internal static class TermExchangeCommand
{
    public static Command Create(Report report)
    {
        var term = new Argument<string>("TERM") { Description = "The description of a term, such as demo-cohort/term/term.md." };
        var path = new Option<string?>("--record")
        {
            Description = "Take the marks from this record, or from that of this teaching folder.",
            HelpName = "PATH",
        };
        var named = new Option<string?>("--class-name")
        {
            Description = "With a record: what the class is called there, where the term does not say it.",
            HelpName = "NAME",
        };
        var to = CommonOptions.Out("the tables");
        var (school, course, ofClass, session) = (
            Id("--school", "school"),
            Id("--course", "course"),
            Id("--class", "class"),
            Id("--session", "term")
        );
        var (begins, ends) = (Day("--begins", "The first day of the term."), Day("--ends", "The last day of the term."));
        var command = new Command(
            ExportTerm.Kind,
            "Write a term's works, marks and grades as tables of the open standard 1EdTech OneRoster 1.2, for a school's records."
        )
        {
            term,
            path,
            named,
            to,
            school,
            course,
            ofClass,
            session,
            begins,
            ends,
        };
        command.SetAction(parsed =>
        {
            var (file, record) = (parsed.GetRequiredValue(term), parsed.GetValue(path));
            var exchange = new TermExchange(
                parsed.GetRequiredValue(school),
                parsed.GetRequiredValue(course),
                parsed.GetRequiredValue(ofClass),
                parsed.GetRequiredValue(session),
                parsed.GetRequiredValue(begins),
                parsed.GetRequiredValue(ends)
            );
            return report.Write(
                new(
                    parsed.GetRequiredValue(to),
                    ExportTerm.Kind,
                    [.. WeighTerm.Inputs(file), record is null ? null : RecordPlace.Of(record)]
                ),
                run =>
                    record is null
                        ? Produced.Of(WeighTerm.Read(file), request => Export(request, exchange, run))
                        : Produced.Within(RecordPlace.Open(record, RecordOptions.Now, mayBegin: false), open =>
                            Produced.Of(TermOnRecord.Read(file, open, parsed.GetValue(named)), request => Export(request, exchange, run))
                        )
            );
        });
        return command;
    }

    private static Produced Export(WeighRequest request, TermExchange exchange, Run run) =>
        Produced.Of(ExportTerm.Run(new(request.Term, exchange), run), ExportTerm.Write);
}
