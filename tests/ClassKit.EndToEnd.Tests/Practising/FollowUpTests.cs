using System.Text.Json;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.Exercises;
using ClassKit.UseCases;

namespace ClassKit.EndToEnd.Tests.Practising;

/// <summary>A rehearsed class is graded, and each of its students gets practice aimed at what they missed.</summary>
public sealed class FollowUpTests : IClassFixture<FollowUpTests.Rehearsal>
{
    private static readonly string Bank = Path.Combine(Checkout.Demo.Root, "lessons", "practice");

    private readonly Rehearsal _rehearsal;

    public FollowUpTests(Rehearsal rehearsal) => _rehearsal = rehearsal;

    private static DealtClass Dealt(string folder) => DealtJson.Read("dealt.json", File.ReadAllText(Path.Combine(folder, "dealt.json"))).Model!;

    private ClassKitRun FollowUp(string to, params string[] options) => ClassKitRun.Of(
        ["follow-up", _rehearsal.Of("rehearsed", "dealt"), "--graded", _rehearsal.Of("rehearsed", "graded"), "--from", Bank, "--out", _rehearsal.Of(to), .. options]);

    /// <summary>The skills on which a student lost points, by grades.json.</summary>
    private Dictionary<string, HashSet<string>> Lost()
    {
        var skills = Dealt(_rehearsal.Of("rehearsed", "dealt")).Exercises.ToDictionary(exercise => exercise.Id, exercise => exercise.Skill);
        using var grades = JsonDocument.Parse(File.ReadAllText(_rehearsal.Of("rehearsed", "graded", "grades.json")));
        return grades.RootElement.GetProperty("students").EnumerateArray().ToDictionary(
            student => student.GetProperty("id").GetString()!,
            student => student.GetProperty("answers").EnumerateArray()
                .Where(answer => answer.GetProperty("points").GetDouble() < answer.GetProperty("outOf").GetDouble())
                .Select(answer => skills[answer.GetProperty("exercise").GetString()!]).ToHashSet());
    }

    [Fact]
    public void Everyone_who_lost_points_practises_their_own_weak_skills_with_numbers_they_never_had()
    {
        FollowUp("whole-class").Done();

        var before = Dealt(_rehearsal.Of("rehearsed", "dealt"));
        var after = Dealt(_rehearsal.Of("whole-class"));
        var lost = Lost();
        Assert.Equal(lost.Where(student => student.Value.Count > 0).Select(student => student.Key), after.Students.Select(student => student.Student.Id));
        foreach (var student in after.Students)
        {
            var exercises = after.ExercisesOf(student);
            Assert.All(exercises, exercise => Assert.Contains(exercise.Skill, lost[student.Student.Id]));
            Assert.InRange(exercises.Sum(exercise => exercise.Minutes), 1, MakeFollowUp.DefaultMinutes);
            var had = before.Students.Single(one => one.Student == student.Student with { Email = null });
            Assert.All(exercises, exercise => Assert.NotEqual(had.GivensOf(exercise.Id), student.GivensOf(exercise.Id)));
            Assert.True(File.Exists(_rehearsal.Of("whole-class", "pages", $"{student.Student.Id}.html")));
            Assert.True(File.Exists(_rehearsal.Of("whole-class", "workbooks", $"{student.Student.Id}.xlsx")));
        }
        Assert.InRange(after.Students.Select(student => string.Join(' ', after.ExercisesOf(student).Select(exercise => exercise.Id))).Distinct().Count(), 3, after.Students.Count);
    }

    [Fact]
    public void Its_workbooks_can_be_graded_like_any_other()
    {
        FollowUp("to-grade").Done();

        var run = ClassKitRun.Of("grade", _rehearsal.Of("to-grade"), "--returned", _rehearsal.Of("to-grade", "workbooks"), "--out", _rehearsal.Of("graded-again")).Done();
        var students = Dealt(_rehearsal.Of("to-grade")).Students.Count;
        Assert.Contains($"{students} of {students} students graded", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void One_student_alone_gets_the_same_practice_as_with_the_class()
    {
        FollowUp("all").Done();
        var student = Dealt(_rehearsal.Of("all")).Students[1];
        FollowUp("alone", "--student", student.Student.Id).Done();

        var alone = Assert.Single(Dealt(_rehearsal.Of("alone")).Students);
        Assert.Equal(student.Givens.Select(given => (given.Exercise, given.Name, given.Value)), alone.Givens.Select(given => (given.Exercise, given.Name, given.Value)));
    }

    [Theory]
    [InlineData(1, "Nobody in Invented class has the id `student-01`. Did you mean `student-001`?", "--student", "student-01")]
    [InlineData(2, "--minutes takes a whole number", "--minutes", "none")]
    public void What_cannot_be_done_is_said(int exitCode, string problem, params string[] options)
    {
        var run = FollowUp("never", options);

        Assert.Equal(exitCode, run.ExitCode);
        Assert.Contains(problem, run.Problems, StringComparison.Ordinal);
    }

    public sealed class Rehearsal : IDisposable
    {
        private readonly TemporaryFolder _folder = new();

        public Rehearsal() => ClassKitRun.Of(
            "rehearse", Bank, "--students", "12", "--skill", "yeast", "--skill", "cost", "--skill", "baker's percentage", "--level", "standard", "--minutes", "45", "--out", Of("rehearsed")).Done();

        public string Of(params string[] parts) => _folder.Of(parts);

        public void Dispose() => _folder.Dispose();
    }
}
