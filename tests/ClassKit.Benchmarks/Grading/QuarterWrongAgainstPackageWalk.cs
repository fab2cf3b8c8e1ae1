using BenchmarkDotNet.Attributes;
using ClassKit.Benchmarks.Material;
using ClassKit.Grading;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.Workbooks.Returned;

namespace ClassKit.Benchmarks.Grading;

/// <summary>
/// The aim: a class in which a quarter of the answers are wrong in ways that nobody listed, so that each is looked for among the neighbours
/// of its key and then held against everybody else's, is read, graded and grouped in at most three times what unzipping and walking every
/// XML part of the same files costs. One core.
/// </summary>
/// <remarks>
/// On 2026-11-30, by the processor time of one thread on a machine far too busy, medians of 16 runs: 3.3 and 3.8, and 5.4 and 6.9 by turns
/// with them for the program before what a class has in common was judged once. On 2026-12-01, once everything was compiled, medians of 121
/// runs by turns: 2.72 twice, and 3.07 and 3.45 for the program before what carries a slip on was judged without a trial.
/// </remarks>
[MemoryDiagnoser]
public class QuarterWrongAgainstPackageWalk
{
    private const int Students = 40;

    private readonly TwentyAnswers _material = new(Students);
    private readonly List<byte[]> _files;

    /// <summary>Deals and fills the class's workbooks, and makes sure that what will be measured is a class of that kind.</summary>
    public QuarterWrongAgainstPackageWalk()
    {
        _files =
        [
            .. _material.Dealt.Students.Select(
                (student, at) => _material.FillQuarterWrong(student, wrongFrom: at % TwentyAnswers.OneWrongIn)
            ),
        ];
        var answers = Graded().Students.SelectMany(student => student.Answers).ToList();
        var wrong = answers.Count(answer => answer.Outcome == Outcome.Incorrect);
        if (wrong < answers.Count / 5)
            throw new InvalidOperationException($"Only {wrong} of {answers.Count} answers are wrong.");
    }

    /// <summary>The floor under any reader.</summary>
    [Benchmark(Baseline = true)]
    public int WalkZipAndXml() => _files.Sum(PackageWalk.Nodes);

    /// <summary>From bytes to outcomes and shared methods.</summary>
    [Benchmark]
    public int GradeAndGroup() => WrongMethods.In(Graded()).Count;

    /// <summary>One file after the other, as the program does: what was judged is not kept.</summary>
    private ClassGrades Graded() =>
        ClassGrader.Grade(
            _material.Dealt,
            _files.Select((file, at) => new ReturnedFile($"{at}.xlsx", ReturnedWorkbookReader.Read(file).Workbook, null))
        );
}
