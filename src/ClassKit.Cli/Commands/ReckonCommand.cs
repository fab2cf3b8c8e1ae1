using System.CommandLine;
using System.CommandLine.Parsing;
using ClassKit.BenchSums;
using ClassKit.Cli.Reporting;
using ClassKit.Content.Wording;
using ClassKit.UseCases.Reckoning;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit reckon</c></summary>
internal static class ReckonCommand
{
    public static Command Create(Report report)
    {
        var sum = new Argument<string?>("SUM") { Description = "Which sum; without it all are listed.", Arity = ArgumentArity.ZeroOrOne };
        var values = new Argument<KeyValuePair<string, string>[]>("NAME=VALUE")
        {
            Description = "What the sum asks for, such as dough=25C; without any it says what it asks for.",
            Arity = ArgumentArity.ZeroOrMore,
            CustomParser = ParsePairs,
        };
        var command = new Command(
            "reckon",
            "Work out a sum of the bench, with its steps: dough temperature, ice, yeast, soda, scaling, altitude, cost."
        )
        {
            sum,
            values,
        };
        command.SetAction(parsed => Run(report, parsed.GetValue(sum), parsed.GetValue(values) ?? []));
        return command;
    }

    private static int Run(Report report, string? id, KeyValuePair<string, string>[] typed)
    {
        if (id is null)
        {
            SumTable.WriteAll(report.Output);
            return ExitCode.Done;
        }
        if (BenchSumCatalogue.Find(id) is not { } sum)
            return report.Problems([new(id, null, "There is no sum of that name", $"{Meant(id)}`classkit reckon` lists them all.")]);
        if (typed.Length == 0)
        {
            SumTable.WriteInputs(report.Output, sum);
            return ExitCode.Done;
        }
        var worked = report.Watch(run => WorkBenchSum.Run(new(sum, typed), run));
        if (!worked.Succeeded)
            return report.Problems(worked.Problems);
        SumTable.Write(report.Output, worked.Model);
        return ExitCode.Done;
    }

    private static string Meant(string id) =>
        NearestWord.To(id, BenchSumCatalogue.All.Select(sum => sum.Id)) is { } near ? $"Did you mean `{near}`? " : "";

    private static KeyValuePair<string, string>[] ParsePairs(ArgumentResult result)
    {
        List<KeyValuePair<string, string>> pairs = [];
        foreach (var token in result.Tokens)
        {
            var name = token.Value.IndexOf('=', StringComparison.Ordinal);
            if (name > 0)
                pairs.Add(new(token.Value[..name], token.Value[(name + 1)..]));
            else
                result.AddError(
                    $"`{token.Value}` is no pair of a name and a value: write it as dough=25C, in quotes where there are spaces."
                );
        }
        return [.. pairs];
    }
}
