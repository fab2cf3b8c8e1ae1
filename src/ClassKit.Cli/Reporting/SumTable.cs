using ClassKit.BenchSums;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;
using ClassKit.UseCases.Reckoning;

namespace ClassKit.Cli.Reporting;

/// <summary>Bench sums in a terminal: which there are, what one asks for, what it comes to and how.</summary>
internal static class SumTable
{
    /// <summary>Every sum by topic, a line each.</summary>
    public static void WriteAll(TextWriter output)
    {
        var width = BenchSumCatalogue.All.Max(sum => sum.Id.Length);
        foreach (var topic in BenchSumCatalogue.All.GroupBy(sum => sum.Topic))
        {
            output.WriteLine(Heading(topic.Key));
            foreach (var sum in topic)
                output.WriteLine($"  {sum.Id.PadRight(width)}  {sum.Title}");
            output.WriteLine();
        }
        output.WriteLine("`classkit reckon SUM` says what a sum asks for.");
    }

    /// <summary>What a sum asks for, with an example to copy.</summary>
    public static void WriteInputs(TextWriter output, BenchSum sum)
    {
        output.WriteLine(sum.Title);
        output.WriteLine();
        var width = sum.Inputs.Max(input => input.Id.Length);
        foreach (var input in sum.Inputs)
            output.WriteLine($"  {input.Id.PadRight(width)}  {input.Label}: {input.Shape}{Otherwise(input)}");
        output.WriteLine();
        output.WriteLine(
            $"For example: classkit reckon {sum.Id} {string.Join(' ', sum.Inputs.Where(input => input.Need == InputNeed.Required).Select(Example))}"
        );
    }

    /// <summary>What a sum comes to, what was taken for it, and every step.</summary>
    public static void Write(TextWriter output, WorkedSum worked)
    {
        output.WriteLine(worked.Sum.Title);
        output.WriteLine();
        WritePairs(output, [.. worked.Result.Lines.Select(line => (line.Label, QuantityText.Show(line.Quantity)))]);
        output.WriteLine();
        output.WriteLine("From");
        WritePairs(output, [.. worked.Taken.Select(pair => (pair.Key.Label, pair.Value))]);
        foreach (var working in worked.Result.Workings)
        {
            output.WriteLine();
            output.WriteLine(working.Title);
            foreach (var step in working.Steps)
                output.WriteLine($"  {step}");
            if (working.Model.Length > 0)
                output.WriteLine($"  {working.Model}");
        }
        if (worked.Result.Advice.Count == 0)
            return;
        output.WriteLine();
        output.WriteLine("Mind");
        foreach (var advice in worked.Result.Advice)
            output.WriteLine($"  {advice.Message} ({advice.Source})");
    }

    private static void WritePairs(TextWriter output, IReadOnlyList<(string Label, string Text)> pairs)
    {
        var width = pairs.Max(pair => pair.Label.Length);
        foreach (var (label, text) in pairs)
            output.WriteLine($"  {label.PadRight(width)}  {text}");
    }

    private static string Heading(SumTopic topic) =>
        topic switch
        {
            SumTopic.Scaling => "Scaling",
            SumTopic.Temperature => "Dough temperature",
            SumTopic.Yeast => "Yeast",
            SumTopic.Chemical => "Soda, acid and powder",
            SumTopic.GasAndAltitude => "Steam, bubbles and altitude",
            SumTopic.Measures => "Cups and spoons",
            SumTopic.Cost => "Yield and cost",
            SumTopic.Safety => "Food safety",
        };

    private static string Otherwise(SumInput input) =>
        input.Need switch
        {
            InputNeed.Required => "",
            InputNeed.Usual => $"; {input.Usual} if not said",
            InputNeed.Optional => "; may be left out",
        };

    private static string Example(SumInput input) =>
        input.Example.Contains(' ', StringComparison.Ordinal) ? $"\"{input.Id}={input.Example}\"" : $"{input.Id}={input.Example}";
}
