using BenchmarkDotNet.Attributes;
using ClassKit.Benchmarks.Material;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Workbooks.Returned;

namespace ClassKit.Benchmarks.Evaluating;

/// <summary>
/// The claim: evaluating the answers of a workbook of twenty answers on eight fresh inputs, parsing their formulas included, costs less
/// than walking the workbook's zip and XML once.
/// </summary>
[MemoryDiagnoser]
public class FreshInputsAgainstPackageWalk
{
    private readonly TwentyAnswers _material = new();
    private readonly WorkbookSnapshot _workbook;

    /// <summary>Deals, fills and reads the workbook once, and makes sure that what will be measured comes to numbers.</summary>
    public FreshInputsAgainstPackageWalk()
    {
        _workbook = ReturnedWorkbookReader.Read(_material.Returned).Workbook!;
        if (Evaluate() != _material.Answers.Count * _material.FreshInputs.Count)
            throw new InvalidOperationException("Some answers do not come to numbers.");
    }

    /// <summary>The floor under any reader.</summary>
    [Benchmark(Baseline = true)]
    public int WalkZipAndXml() => PackageWalk.Nodes(_material.Returned);

    /// <summary>A new evaluator, as for each student's file; then all answers on each set of inputs.</summary>
    [Benchmark]
    public int Evaluate()
    {
        var evaluator = new WorkbookEvaluator(_workbook);
        return _material.FreshInputs.Sum(inputs => evaluator.EvaluateAll(_material.Answers, inputs).Count(result => result.Value.IsNumber));
    }
}
