using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Records;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Recording;

/// <summary>Grades go on record and come out again as they were.</summary>
public sealed class RecordedGradesTests : IDisposable
{
    private static readonly Author Kim = new(new(2026, 11, 29, 12, 0, 0, TimeSpan.Zero), "Kim", "");

    /// <summary>As it is read from a folder.</summary>
    private static readonly DealtClass Small = DealtJson.Read("dealt.json", DealtJson.Write(SmallClass.Dealt)).Model!;

    private readonly TeachingRecord _record = TeachingRecord.InMemory();

    public void Dispose() => _record.Dispose();

    [Fact]
    public void Whatever_can_stand_in_grades_comes_out_of_the_record_equal_in_every_field()
    {
        for (var seed = 0; seed < 100; seed++)
        {
            var grades = Any(seed);
            Assert.Equal(seed + 1, Enter(grades).Number);

            var back = _record.Read(session => RecordedGrades.Of(session, Small.Identity!.Digest))!;

            // The deal stays as it was dealt; grades may be by another marking scheme.
            var differences = Differences.Between(
                grades with
                {
                    Dealt = grades.Dealt with { Students = [] },
                },
                back with
                {
                    Dealt = back.Dealt with { Students = [] },
                }
            );
            Assert.True(differences is [], $"seed {seed}: {string.Join("\n", differences.Take(5))}");
            Assert.Empty(Differences.Between(Small.Students, back.Dealt.Students));
            Assert.Equal(GradesJson.Write(grades), GradesJson.Write(back));
        }
    }

    [Fact]
    public void The_same_grades_go_on_record_once()
    {
        var grades = Any(1);

        Assert.Equal([1, null], [Enter(grades).Number, Enter(grades).Number]);
    }

    [Fact]
    public void Of_a_student_all_is_shown()
    {
        var grades = Any(3);
        Enter(grades);

        var shown = ShowStudent.Run(new(_record, "ada-berg"), Run.Unwatched).Model!;

        Assert.Equal(("Ada Berg", "Invented class"), (shown.Student.Name, Assert.Single(shown.Enrolments).Class.Name));
        Assert.Empty(Differences.Between(grades.Students[0], Assert.Single(shown.Works).Grade));
        Assert.Single(ShowStudent.Run(new(_record, "nobody"), Run.Unwatched).Problems);
    }

    private static ClassGrades Any(int seed)
    {
        var any = AnyGrades.Of(Small, seed);
        return any with { Dealt = any.Dealt with { Identity = Small.Identity } };
    }

    private EnteredGrades Enter(ClassGrades grades)
    {
        var entered = EnterGrades.Run(new(_record, Kim, null, grades), Run.Unwatched);
        Assert.Empty(entered.Problems);
        return entered.Model!;
    }
}
