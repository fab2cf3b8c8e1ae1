using System.Globalization;
using ClassKit.Grading;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Inspecting;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Wording.Files;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>Every file of the corpus ends in grades or in a refusal that says what to do, alone and among others.</summary>
public sealed class HostileCorpusTests(ITestOutputHelper output)
{
    /// <summary>
    /// What reading and judging one file may allocate in all, most of it given back at once; how much is held at a time is less.
    /// </summary>
    private const long MostAllocated = 200L * 1024 * 1024;

    /// <summary>The same for inspecting, which recomputes every formula there is.</summary>
    private const long MostAllocatedInspecting = 4_000L * 1024 * 1024;

    private static readonly ClassGrader Grader = new(SmallClass.Dealt);

    [Fact]
    public void The_corpus_is_large_and_no_file_is_in_it_twice()
    {
        Assert.True(Corpus.Files.Count >= 300, $"{Corpus.Files.Count} files");
        Assert.Equal(Corpus.Files.Count, Corpus.Files.Select(file => file.Name).Distinct().Count());
    }

    [Fact]
    public void Every_file_ends_in_grades_or_in_a_clear_refusal_within_bounds()
    {
        // Nobody asserts seconds on a machine of others, but those of the processor are printed. The evaluator's steps are bounded by
        // count.
        var seconds = new List<(double Seconds, string Name)>();
        foreach (var file in Corpus.Files.Where((file, at) => Trials.All || !file.IsOneOfMany || at % 6 == 0))
        {
            var bytes = file.Make();
            var before = GC.GetAllocatedBytesForCurrentThread();
            var began = ThreadTime.Nanoseconds;
            var judged = Grader.Begin();
            foreach (var item in Archive.Open(new(file.Name, bytes, null)))
                judged.Add(Grader.Judge(FileReading.Read(item)));
            var grades = Grader.Settle(judged);
            seconds.Add(((ThreadTime.Nanoseconds - began) / 1e9, file.Name));

            Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < MostAllocated, file.Name);
            Assert.NotEmpty(grades.Files);
            Assert.All(grades.Files, given => Assert.True(IsClear(given, file.MustBeRefused), $"{file.Name}: {given}"));
        }

        Print(seconds);
    }

    /// <summary>
    /// What costs most, and every tenth of the others: inspecting takes up to a hundred times the steps that grading may, and all of them
    /// take minutes.
    /// </summary>
    [Fact]
    public void Files_are_inspected_or_refused_within_bounds()
    {
        var seconds = new List<(double Seconds, string Name)>();
        foreach (var file in Corpus.Files.Where((file, at) => at % 10 == 0 || file.Name == "the costliest, six times 0"))
        {
            var bytes = file.Make();
            var before = GC.GetAllocatedBytesForCurrentThread();
            var began = ThreadTime.Nanoseconds;
            var inspection = InspectWorkbook.Run(new(new(file.Name, () => new MemoryStream(bytes))), Run.Unwatched);
            seconds.Add(((ThreadTime.Nanoseconds - began) / 1e9, file.Name));

            var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
            Assert.True(
                allocated < MostAllocatedInspecting,
                string.Create(CultureInfo.InvariantCulture, $"{file.Name}: {allocated:N0} bytes")
            );
            Assert.True(inspection.Succeeded || inspection.Problems.All(problem => problem.Found.Length > 0), file.Name);
        }

        Print(seconds);
    }

    private void Print(List<(double Seconds, string Name)> seconds)
    {
        foreach (var (time, name) in seconds.OrderByDescending(slow => slow).Take(10))
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{time:0.000} s  {name}"));
    }

    [Fact]
    public void No_bad_file_disturbs_a_good_one()
    {
        using var folder = new TemporaryFolder();
        foreach (var (file, at) in Corpus.Files.Where((_, at) => at % 9 == 0).Select((file, at) => (file, at)))
            folder.Write($"{at % 7}/{at} {file.Name.Replace('/', ' ')}", file.Make());
        folder.Write("3/ben.xlsx", SmallClass.Filled(SmallClass.Ben));
        folder.Write("zz.zip", Zip.Of(("cleo.xlsx", SmallClass.Filled(SmallClass.Cleo))));

        var grades = Grader.Settle(ParallelJudging.Judge(Grader, ReturnedFiles.At(folder.Path).Model!, Run.Unwatched));

        Assert.Equal(["3/ben.xlsx", "zz.zip/cleo.xlsx"], grades.Students.Skip(1).Select(student => student.File));
        Assert.All(grades.Students.Skip(1).SelectMany(student => student.Answers), answer => Assert.Equal(Outcome.Sound, answer.Outcome));
    }

    private static bool IsClear(AccountedFile file, bool mustBeRefused) =>
        file.Fate switch
        {
            FileFate.Graded or FileFate.Paper or FileFate.OtherVersion => !mustBeRefused,
            FileFate.Refused => UncountedWords.Of(file).Contains("and it in", StringComparison.Ordinal)
                || UncountedWords.Of(file).Contains("and in the workbook", StringComparison.Ordinal)
                || UncountedWords.Of(file).Contains("and that", StringComparison.Ordinal),
            FileFate.NotOfThisClass => file.Why is Uncounted.OfNobody,
            FileFate.OtherDeal => file.Why is Uncounted.OfOtherDeal,
            FileFate.OurError or FileFate.Leftover => false,
        };
}
