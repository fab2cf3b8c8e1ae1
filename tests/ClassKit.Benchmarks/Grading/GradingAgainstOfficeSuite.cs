using System.Diagnostics;
using BenchmarkDotNet.Attributes;
using ClassKit.Benchmarks.Material;
using ClassKit.Grading;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;
using ClassKit.Workbooks.Returned;

namespace ClassKit.Benchmarks.Grading;

/// <summary>
/// The claim: reading a workbook of twenty answers and grading it on eight fresh inputs is at least thirty times faster than an office
/// suite that opens, recalculates and saves it once. Both take the same forty files, on one core each; the suite takes all of them in one
/// process, so that its start is shared.
/// </summary>
/// <remarks>LibreOffice calculates on loading, since what is filled in holds formulas without stored values.</remarks>
[WarmupCount(1), IterationCount(3), InvocationCount(1, 1)] // Some ten seconds each, so that once is enough to be a measurement.
public class GradingAgainstOfficeSuite : IDisposable
{
    private const int Students = 40;

    private readonly TwentyAnswers _material = new(Students);
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("classkit-");
    private readonly List<string> _files;

    /// <summary>Puts the class's filled workbooks into a folder.</summary>
    public GradingAgainstOfficeSuite()
    {
        _files = [.. _material.Dealt.Students.Select(student => Path.Combine(_folder.FullName, $"{student.Who.Id}.xlsx"))];
        foreach (var (student, file) in _material.Dealt.Students.Zip(_files))
            File.WriteAllBytes(file, _material.Fill(student));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _folder.Delete(recursive: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>From files to outcomes.</summary>
    [Benchmark(Baseline = true)]
    public int Grade()
    {
        var returned = _files
            .Select(file => new ReturnedFile(Path.GetFileName(file), ReturnedWorkbookReader.Read(File.ReadAllBytes(file)).Workbook, null))
            .ToList();
        return ClassGrader
            .Grade(_material.Dealt, returned)
            .Students.SelectMany(student => student.Answers)
            .Count(answer => answer.Outcome == Outcome.Sound);
    }

    /// <summary>From files to files whose values were calculated anew.</summary>
    [Benchmark]
    public int RecalculateInLibreOffice()
    {
        var saved = _folder.CreateSubdirectory("saved");
        string[] arguments =
        [
            $"-env:UserInstallation=file://{_folder.FullName}/profile",
            "--headless",
            "--convert-to",
            "xlsx",
            "--outdir",
            saved.FullName,
            .. _files,
        ];
        var start = new ProcessStartInfo("soffice", arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)
            ?? throw new InvalidOperationException("LibreOffice (soffice) could not be started: install it to run this benchmark.");
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        process.WaitForExit();
        var files = saved.GetFiles().Length;
        saved.Delete(recursive: true);
        return files == Students ? files : throw new InvalidOperationException($"LibreOffice saved {files} of {Students} files.");
    }
}
