using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Terms;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit weigh</c></summary>
internal static class WeighCommand
{
    public static Command Create(Report report)
    {
        var term = new Argument<string>("TERM") { Description = "The description of a term, such as demo-cohort/term/term.md." };
        var to = CommonOptions.Out("the class's report, a page a student and the workbook");
        var command = new Command(WeighTerm.Kind, "Weigh the marks of a term into grades, every step shown.") { term, to };
        command.SetAction(parsed => report.Write(
            new(parsed.GetRequiredValue(to), WeighTerm.Kind, [.. WeighTerm.Inputs(parsed.GetRequiredValue(term))]),
            run => Produced.Of(WeighTerm.Read(parsed.GetRequiredValue(term)), request => WeighTerm.Write(WeighTerm.Run(request, run)))));
        return command;
    }
}
