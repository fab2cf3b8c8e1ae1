using ClassKit.Grading.Results;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Wording.Files;

namespace ClassKit.UseCases.Tests.Running;

/// <summary>A use case as any front calls it: started, watched and stopped, with uploads as streams and its files into memory.</summary>
public class RunTests
{
    private static Upload Of(string path, byte[] content) => new(path, () => new MemoryStream(content, writable: false));

    private static GradeRequest Request(params Upload[] uploads) => new(SmallClass.Dealt, ReturnedFiles.Of(uploads));

    [Fact]
    public void Grading_is_started_watched_and_its_files_made_without_a_disk()
    {
        var watcher = new Watcher();
        var graded = GradeClass.Run(
            Request(Of("ada.xlsx", SmallClass.Filled(SmallClass.Ada)), Of("ben.xlsx", SmallClass.Blank(SmallClass.Ben))),
            new(watcher)
        );

        Assert.Equal(
            [new(RunStep.Judging, 0, 2), new(RunStep.Judging, 1, 2), new(RunStep.Judging, 2, 2)],
            watcher.Seen.Select(progress => progress with { What = null })
        );
        Assert.Equal(
            ["ada.xlsx", "ben.xlsx"],
            watcher.Seen.Select(progress => progress.What).OfType<string>().Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            [GradeStatus.Graded, GradeStatus.Graded, GradeStatus.Missing],
            graded.Grades.Students.Select(student => student.Status)
        );
        Assert.All(graded.Grades.Students[0].Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome));
        using var memory = new MemoryStream();
        GradeFiles.Of(graded).Single(file => file.Path == "grades.json").WriteTo(memory);
        Assert.Equal(
            SmallClass.Ada.Who.Id,
            GradesJson.Read("grades.json", System.Text.Encoding.UTF8.GetString(memory.ToArray()), null).Model!.Students[0].Who.Id
        );
    }

    [Fact]
    public void Grading_stops_at_the_next_file_when_it_is_told_to()
    {
        using var stop = new CancellationTokenSource();
        var opened = 0;
        var uploads = Enumerable
            .Range(0, 200)
            .Select(at => new Upload($"{at}.xlsx", () =>
            {
                if (Interlocked.Increment(ref opened) == 3)
                    stop.Cancel();
                return new MemoryStream(SmallClass.Blank(SmallClass.Ada), writable: false);
            }));

        Assert.Throws<OperationCanceledException>(() => GradeClass.Run(Request([.. uploads]), new(null, stop.Token)));
        Assert.InRange(opened, 3, 3 + Environment.ProcessorCount);
    }

    [Fact]
    public void A_folder_is_as_it_was_when_its_files_are_stopped_halfway()
    {
        using var sample = new OutputSample();
        sample.WriteOld();
        var before = sample.Everything();
        using var stop = new CancellationTokenSource();
        var watcher = new Watcher(progress =>
        {
            if (progress is { Step: RunStep.MakingFiles, Done: 1 })
                stop.Cancel();
        });

        Assert.Throws<OperationCanceledException>(() =>
            OutputFolder.Write(new(sample.Out, OutputSample.Kind), () => new(OutputSample.New, [], []), new(watcher, stop.Token))
        );
        Assert.Equal(before, sample.Everything());
    }

    [Fact]
    public void Uploads_are_opened_through_archives_as_folders_are_and_what_fails_is_named()
    {
        var zip = Zip.Of(("ada.xlsx", SmallClass.Filled(SmallClass.Ada)));
        var whole = GradeClass.Run(Request(Of("class.zip", zip)), Run.Unwatched).Grades;
        Assert.Equal("ada.xlsx", whole.Students[0].File);

        var several = GradeClass
            .Run(Request(Of("late/ada.zip", zip), new("ben-okoye.xlsx", () => throw new IOException("/home/instructor"))), Run.Unwatched)
            .Grades;
        Assert.Equal("late/ada.zip/ada.xlsx", several.Students[0].File);
        Assert.Equal(GradeStatus.Unreadable, several.Students[1].Status);
        Assert.DoesNotContain(
            "/home",
            UncountedWords.Of(several.Files.Single(file => file.File == "ben-okoye.xlsx")),
            StringComparison.Ordinal
        );

        var alone = GradeClass.Run(Request(Of("ada.xlsx", SmallClass.Filled(SmallClass.Ada))), Run.Unwatched).Grades;
        Assert.Equal("ada.xlsx", alone.Students[0].File);
    }

    [Fact]
    public void An_upload_that_never_ends_is_refused()
    {
        var grades = GradeClass.Run(Request(new Upload("ada.xlsx", () => new Endless())), Run.Unwatched).Grades;
        Assert.Contains("larger than any practice workbook", UncountedWords.Of(grades.Files.Single()), StringComparison.Ordinal);
    }

    private sealed class Endless : MemoryStream
    {
        public override bool CanSeek => false;

        public override int Read(byte[] buffer, int offset, int count) => count;

        public override int Read(Span<byte> buffer) => buffer.Length;
    }
}
