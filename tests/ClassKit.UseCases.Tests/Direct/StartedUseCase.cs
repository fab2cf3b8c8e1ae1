using System.Text;
using ClassKit.BenchSums;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Results;
using ClassKit.Lessons.Authored;
using ClassKit.Records.Storage;
using ClassKit.Terms.Difficulty;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Trials;
using ClassKit.UseCases.Beginning;
using ClassKit.UseCases.BenchMarks;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Difficulty;
using ClassKit.UseCases.Exporting;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Handing;
using ClassKit.UseCases.Inspecting;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Learning;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Papers;
using ClassKit.UseCases.Practising;
using ClassKit.UseCases.Reckoning;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Skills;
using ClassKit.UseCases.Terms;
using ClassKit.UseCases.Tests.Checking.FirstDay;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.UseCases.Touring;

namespace ClassKit.UseCases.Tests.Direct;

/// <summary>Every use case with a small request of its own, of models and streams: what a front does, up to the files in memory.</summary>
internal static class StartedUseCase
{
    private static readonly Lesson Lesson = SmallClass.Lesson with { Exercises = [.. SmallClass.Lesson.Exercises.Take(2)] };

    private static readonly PracticeSet Set = PracticeSet.Of(Lesson);

    private static readonly Roster Roster = new("Invented class", [.. SmallClass.Dealt.Students.Select(seat => seat.Who)]);

    private static readonly DealWish Wish = new(SetWish.None, IsSpread: false, 5);

    private static readonly PackRequest Pack = new(Lesson, UsualClass.Profile, "class.md");

    private static readonly ReturnedFiles Returned = ReturnedFiles.Of(
        Of("ada-berg.xlsx", SmallClass.Filled(SmallClass.Ada)),
        Of("ben-okoye.xlsx", SmallClass.Blank(SmallClass.Ben))
    );

    private static readonly Lazy<ClassGrades> Graded = new(() =>
        GradesJson
            .Read("grades.json", GradesJson.Write(GradeClass.Run(new(SmallClass.Dealt, Returned), Run.Unwatched).Grades), SmallClass.Dealt)
            .Model!
    );

    private static readonly Lazy<byte[]> Bundle = new(() =>
        HandOverLesson.Run(new(new TeachingFolder().Library.At("lessons/milk-scones")), Run.Unwatched).Model!.Bytes
    );

    private static readonly Library Memory = new(
        ListedTree.InMemory([
            new("corrections.csv", "student,part,points,reason\n"u8.ToArray()),
            new("roster.csv", "id,name\nada,Ada Berg\n"u8.ToArray()),
        ])
    );

    /// <summary>By the name of the use case: from a run to its files.</summary>
    public static IReadOnlyDictionary<string, Func<Run, IReadOnlyList<OutputFile>>> All { get; } =
        new Dictionary<string, Func<Run, IReadOnlyList<OutputFile>>>
        {
            [nameof(BeginTeaching)] = run => BeginTeaching.Run(new(BeginPart.Folder), run),
            [nameof(HandOverLesson)] = run =>
                HandOverLesson.Write(HandOverLesson.Run(new(new TeachingFolder().Library.At("lessons/milk-scones")), run).Model!).Files,
            [nameof(ReceiveLesson)] = run => ReceiveLesson.Write(ReceiveLesson.Run(new(Of("scones.zip", Bundle.Value)), run).Model!).Files,
            [nameof(BuildPack)] = run => PackFiles.Of(BuildPack.Run(Pack, run).Model!),
            [nameof(DealPractice)] = run => DealFiles.Of(DealPractice.Run(new(Set, Roster, Wish), run).Model!),
            [nameof(MakePractice)] = run => PracticeFiles.Of(MakePractice.Run(new(Set, 5), run).Model!),
            [nameof(MakeFollowUp)] = run =>
                FollowUpFiles.Of(MakeFollowUp.Run(new(SmallClass.Dealt, Graded.Value, new([], 30, 3)), run).Model!),
            [nameof(GradeClass)] = run => GradeFiles.Of(GradeClass.Run(new(SmallClass.Dealt, Returned), run)),
            [nameof(MakePaperSheet)] = run => MakePaperSheet.Write(MakePaperSheet.Run(new(SmallClass.Dealt), run)).Files,
            [nameof(MakeBenchForm)] = run =>
                MakeBenchForm.Write(MakeBenchForm.Run(new(SmallClass.Lesson.BenchRubric, "Invented class", Roster.Students, 2), run)).Files,
            [nameof(MakeObservationForm)] = run => MakeObservationForm.Write(MakeObservationForm.Run(new(Pack), run).Model!).Files,
            [nameof(DrawObservations)] = run => DrawObservations.Write(DrawObservations.Run(new(Pack, Returned), run).Model!).Files,
            [nameof(CompareMarkers)] = run => CompareMarkers.Write(CompareMarkers.Run(Markers, run)).Files,
            [nameof(FollowSkills)] = run =>
                FollowSkills
                    .Write(
                        FollowSkills.Run(
                            new(
                                [(Graded.Value, new(2026, 11, 2)), (Graded.Value, new(2026, 11, 20))],
                                new(2026, 11, 29),
                                new(2026, 12, 18)
                            ),
                            run
                        )
                    )
                    .Files,
            [nameof(ShowDifficulty)] = run =>
                ShowDifficulty
                    .Write(ShowDifficulty.Run(new(Set, PastDifficulty.Of([.. PastWorks.Of(Graded.Value)]), "Invented class", 24), run))
                    .Files,
            [nameof(RegradeClass)] = run => GradeFiles.Of(RegradeClass.Run(new(new(SmallClass.Dealt, Returned), Graded.Value), run).Now),
            [nameof(RehearseLesson)] = run => RehearsalFiles.Of(RehearseLesson.Run(new(Set, 3, Wish), run).Model!),
            [nameof(LearnMisconceptions)] = run =>
                LearnMisconceptions
                    .Write(
                        LearnMisconceptions
                            .Run(new(Learning.LearnMisconceptionsTests.Proposals(), [Learning.LearnMisconceptionsTests.Exercise]), run)
                            .Model!
                    )
                    .Files,
            [nameof(TakeTour)] = run =>
                TakeTour.Write(TakeTour.Run(new(Pack, Roster, 5, Returned, Memory.At("corrections.csv")), run).Model!).Files,
            [nameof(CheckContent)] = run => Text(CheckContent.Run(new(Memory, ["roster.csv"]), run).Items),
            [nameof(InspectWorkbook)] = run =>
                Text(InspectionJson.Write(InspectWorkbook.Run(new(Of("ada.xlsx", SmallClass.Filled(SmallClass.Ada))), run).Model!)),
            [nameof(WorkBenchSum)] = run =>
                Text(
                    WorkBenchSum
                        .Run(
                            new(
                                BenchSumCatalogue.All[0],
                                [.. BenchSumCatalogue.All[0].Inputs.Select(input => KeyValuePair.Create(input.Id, input.Example))]
                            ),
                            run
                        )
                        .Model!.Result.Lines
                ),
            [nameof(ExportItems)] = run => ExportItems.Write(Items, ExportItems.Run(Items, run)).Files,
            [nameof(ExportGrades)] = run =>
                ExportGrades
                    .Write(
                        ExportGrades
                            .Run(new(Graded.Value, new("c", "s", "t", "k", new(2026, 11, 1), new(2026, 11, 20), new(2026, 11, 21))), run)
                            .Model!
                    )
                    .Files,
            [nameof(ExportTerm)] = run =>
                ExportTerm
                    .Write(ExportTerm.Run(new(RuleTrial.Of(Rule), new("s", "k", "c", "t", new(2026, 9, 1), new(2026, 12, 18))), run).Model!)
                    .Files,
            [nameof(WeighTerm)] = run => WeighTerm.Write(WeighTerm.Run(new(RuleTrial.Of(Rule), [], []), run)).Files,
            [nameof(EnterGrades)] = run => InRecord(record => Text(EnterGrades.Run(new(record, Kim, null, Graded.Value), run).Model!)),
            [nameof(ShowStudent)] = run =>
                InRecord(record => ShowStudent.Write(ShowStudent.Run(new(Entered(record), "ada-berg"), run).Model!).Files),
            [nameof(EnterLesson)] = run =>
                InRecord(record =>
                    Text(
                        EnterLesson
                            .Run(new(record, Kim, "Bakers 1", new TeachingFolder().Library.At("lessons/milk-scones"), null), run)
                            .Model!
                    )
                ),
            [nameof(RenameClass)] = run =>
                InRecord(record => Text(RenameClass.Run(new(Entered(record), Kim, "Bakers 1", "Bakers 2"), run).Model!)),
            [nameof(EnterObservations)] = run =>
                InRecord(record =>
                    Text(
                        EnterObservations
                            .Run(new(record, Kim, DrawObservations.Run(new(Pack, Returned), Run.Unwatched).Model!, null), run)
                            .Model!
                    )
                ),
            [nameof(EnterTerm)] = run =>
                InRecord(record =>
                    Text(EnterTerm.Run(EnterTerm.Read(DemoTerm, (plan, deals) => new(record, Kim, null, plan, deals)).Model!, run).Model!)
                ),
            [nameof(FreezeTerm)] = run =>
                InRecord(record =>
                {
                    var term = EnterTerm.Read(DemoTerm, (plan, deals) => new(record, Kim, null, plan, deals)).Model!;
                    EnterTerm.Run(term, Run.Unwatched);
                    return Text(
                        FreezeTerm
                            .Run(
                                new(
                                    record,
                                    Kim,
                                    term.Plan.Class.Cohort,
                                    TermOnRecord.Read(DemoTerm, record, null).Model!.Term,
                                    IsMeant: true
                                ),
                                run
                            )
                            .Model!
                    );
                }),
            [nameof(EraseStudent)] = run =>
                InRecord(record => Text(EraseStudent.Run(new(Entered(record), Kim, "ada-berg", IsMeant: true), run).Model!)),
            [nameof(WriteOutRecord)] = run => InRecord(record => Tables(record, run)),
            [nameof(ReadBackRecord)] = run =>
                InRecord(record =>
                    Tables(record, Run.Unwatched) is var tables
                        ? Text(
                            ReadBackRecord
                                .Run(
                                    new(record, "tables", name => new MemoryStream(tables.Single(table => table.Path == name).Content)),
                                    run
                                )
                                .Model!
                        )
                        : []
                ),
            [nameof(MoveRecord)] = run =>
                InFolder(record =>
                {
                    record.Dispose();
                    return Text(
                        MoveRecord
                            .Run(new(record.Path, Path.Combine(Path.GetDirectoryName(record.Path)!, "elsewhere"), Kim.Now), run)
                            .Model!
                    );
                }),
            [nameof(BackUpRecord)] = run => InFolder(record => Text(BackUpRecord.Run(new(record, Kim.Now), run).Model!)),
        };

    private static Author Kim => new(new(2026, 11, 29, 12, 0, 0, TimeSpan.Zero), "Kim", "");

    private static IReadOnlyList<OutputFile> InRecord(Func<TeachingRecord, IReadOnlyList<OutputFile>> work)
    {
        using var record = TeachingRecord.InMemory();
        return work(record);
    }

    private static IReadOnlyList<OutputFile> InFolder(Func<TeachingRecord, IReadOnlyList<OutputFile>> work)
    {
        using var folder = new TemporaryFolder();
        using var record = RecordPlace.Open(folder.Path, Kim.Now, mayBegin: true).Model!;
        return work(record);
    }

    private static string DemoTerm => Path.Combine(DemoMaterial.Find(AppContext.BaseDirectory)!.Root, "demo-cohort", "term", "term.md");

    /// <summary>The tables in memory, so that the look into the record may close.</summary>
    private static IReadOnlyList<OutputFile> Tables(TeachingRecord record, Run run)
    {
        using var look = record.Look();
        return [.. WriteOutRecord.Write(WriteOutRecord.Run(new(look), run)).Files.Select(file => new OutputFile(file.Path, file.Content))];
    }

    private static TeachingRecord Entered(TeachingRecord record)
    {
        EnterGrades.Run(new(record, Kim, null, Graded.Value), Run.Unwatched);
        return record;
    }

    private static MarkersRequest Markers =>
        new(
            "Bench",
            Roster,
            new(
                new([("Mixing", 1)], [0, 1], ["Not yet", "Secure"]),
                new("First", Roster.Students.ToDictionary(student => student.Id, _ => (IReadOnlyList<int>)[1])),
                new("Second", Roster.Students.ToDictionary(student => student.Id, _ => (IReadOnlyList<int>)[0]))
            )
        );

    private static ItemBankRequest Items => new(Lesson, 2, AsTemplates: false, 1);

    private static GradeRule Rule =>
        GradeRuleReader.Read(Path.Combine(DemoMaterial.Find(AppContext.BaseDirectory)!.Root, "rubrics", "term-grade.md")).Model!;

    private static Upload Of(string path, byte[] content) => new(path, () => new MemoryStream(content, writable: false));

    private static IReadOnlyList<OutputFile> Text(object result) => [new("result.txt", Encoding.UTF8.GetBytes(result.ToString()!))];
}
