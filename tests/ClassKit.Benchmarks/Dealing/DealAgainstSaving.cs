using BenchmarkDotNet.Attributes;
using ClassKit.Benchmarks.Material;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Pages;
using ClassKit.UseCases.Dealing;
using ClassKit.Workbooks.Dealing;
using ClosedXML.Excel;

namespace ClassKit.Benchmarks.Dealing;

/// <summary>
/// The claim: dealing a thousand workbooks of twenty answers, with their sheets, answer key and dealt.json, costs no more than three times
/// what the library that writes workbooks needs to save a thousand copies of one of them.
/// </summary>
[MemoryDiagnoser]
[WarmupCount(1), IterationCount(3), InvocationCount(1, 1)] // Half a minute each, so that once is enough to be a measurement.
public class DealAgainstSaving : IDisposable
{
    private const int Students = 1000;

    private readonly XLWorkbook _workbook;
    private readonly DealtClass _dealt = new TwentyAnswers().Dealt;
    private readonly Roster _roster = new(
        "benchmark",
        [.. Enumerable.Range(1, Students).Select(at => new Student($"s{at:D5}", $"Student {at}"))]
    );

    /// <summary>Opens one dealt workbook, to be saved again and again.</summary>
    public DealAgainstSaving() => _workbook = new XLWorkbook(new MemoryStream(DealtWorkbookWriter.Write(_dealt, _dealt.Students[0])));

    /// <inheritdoc/>
    public void Dispose()
    {
        _workbook.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>A thousand copies of one workbook, saved as they are.</summary>
    [Benchmark(Baseline = true)]
    public long SaveCopies()
    {
        var bytes = 0L;
        for (var copy = 0; copy < Students; copy++)
        {
            // The library goes back to the stream it saved to last, which must stay open.
            var stream = new MemoryStream();
            _workbook.SaveAs(stream);
            bytes += stream.Length;
        }
        return bytes;
    }

    /// <summary>Draws a thousand variants of every exercise and writes every file that a deal writes, each to nowhere.</summary>
    [Benchmark]
    public long Deal()
    {
        var dealt = Dealer.Deal(_dealt.Lesson, _dealt.LessonTitle, _dealt.Exercises, _dealt.Marking, _roster, 1).Class!;
        var writer = new DealtWorkbookWriter(dealt);
        DealtJson.Write(Stream.Null, dealt);
        return HtmlPages.AnswerKey(dealt).Sum(piece => (long)piece.Length)
            + dealt.Students.Sum(student => (long)writer.Write(student).Length + HtmlPages.Sheet(dealt, student).Length);
    }
}
