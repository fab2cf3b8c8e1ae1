using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Practising;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Touring;
using ClassKit.Workbooks.Dealing;

namespace ClassKit.UseCases.Tests.Practising;

/// <summary>A rehearsed class is graded, and each of its students gets practice aimed at what they missed.</summary>
public sealed class FollowUpTests
{
    private static readonly Lazy<FollowUpRequest> Asked = new(Rehearsed);

    private static FollowUpRequest Rehearsed()
    {
        var bank = Path.Combine(DemoMaterial.Find(AppContext.BaseDirectory)!.Root, "lessons", "practice");
        var wish = new SetWish([], ["yeast", "cost", "baker's percentage"], [ExerciseLevel.Standard], 45, null);
        var set = PracticeSet.Read(bank, wish, 1).Model!;
        var rehearsal = RehearseLesson.Run(new(set, 12, new(wish, IsSpread: false, 1)), Run.Unwatched).Model!;
        var grades = GradesJson.Read("grades.json", GradesJson.Write(rehearsal.Graded.Grades), null).Model!;
        return new(rehearsal.Deal.Dealt, grades, new([], MakeFollowUp.DefaultMinutes, 1)) { Pool = set.Pool };
    }

    private static DealtClass FollowUp(params string[] students) =>
        MakeFollowUp.Run(Asked.Value with { Wish = Asked.Value.Wish with { Students = students } }, Run.Unwatched).Model!.Dealt;

    [Fact]
    public void Everyone_who_lost_points_practises_their_own_weak_skills_with_numbers_they_never_had()
    {
        var (before, after) = (Asked.Value.Before, FollowUp());
        var skills = before.Exercises.ToDictionary(exercise => exercise.Id, exercise => exercise.Skill);
        var lost = Asked.Value.Grades.Students.ToDictionary(
            student => student.Who.Id,
            student =>
                student.Answers.Where(answer => answer.Points < answer.OutOf).Select(answer => skills[answer.Exercise.Id]).ToHashSet()
        );

        Assert.Equal(
            lost.Where(student => student.Value.Count > 0).Select(student => student.Key),
            after.Students.Select(student => student.Who.Id)
        );
        foreach (var student in after.Students)
        {
            var exercises = after.ExercisesOf(student);
            Assert.All(exercises, exercise => Assert.Contains(exercise.Skill, lost[student.Who.Id]));
            Assert.InRange(exercises.Sum(exercise => exercise.Minutes), 1, MakeFollowUp.DefaultMinutes);
            var had = before.Students.Single(one => one.Who.Id == student.Who.Id);
            Assert.All(exercises, exercise => Assert.NotEqual(had.GivensOf(exercise.Id), student.GivensOf(exercise.Id)));
        }
        Assert.InRange(
            after
                .Students.Select(student => string.Join(' ', after.ExercisesOf(student).Select(exercise => exercise.Id)))
                .Distinct()
                .Count(),
            3,
            after.Students.Count
        );
    }

    [Fact]
    public void Its_workbooks_can_be_graded_like_any_other()
    {
        var dealt = FollowUp();
        var uploads = dealt.Students.Select(student => new Upload(student.Workbook, () =>
            new MemoryStream(DealtWorkbookWriter.Write(dealt, student))
        ));
        var grades = GradeClass.Run(new(dealt, ReturnedFiles.Of([.. uploads])), Run.Unwatched).Grades;
        Assert.All(grades.Students, student => Assert.Equal(GradeStatus.Graded, student.Status));
    }

    [Fact]
    public void One_student_alone_gets_the_same_practice_as_with_the_class()
    {
        var student = FollowUp().Students[1];
        var alone = Assert.Single(FollowUp(student.Who.Id).Students);
        static IEnumerable<(string, string, decimal)> Numbers(DealtStudent of) =>
            of.Variants.SelectMany(variant => variant.Givens.Select(given => (variant.Exercise.Id, given.Key, given.Value)));
        Assert.Equal(Numbers(student), Numbers(alone));
    }

    [Fact]
    public void Somebody_who_is_not_in_the_class_is_named_with_who_may_be_meant()
    {
        var problem = Assert.Single(MakeFollowUp.Run(Asked.Value with { Wish = new(["student-01"], 30, 1) }, Run.Unwatched).Problems);
        Assert.Equal("Nobody in Invented class has the id `student-01`", problem.Found);
        Assert.Equal("Did you mean `student-001`?", problem.Expected);
    }
}
