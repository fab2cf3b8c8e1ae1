using ClassKit.Grading.FollowUps;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests.FollowUps;

public sealed class AnotherTryTests
{
    [Fact]
    public void Other_numbers_are_neither_those_dealt_nor_those_that_the_workbook_was_tried_with()
    {
        var (grades, student) = Graded("=3*want-sum+1");
        var pool = grades.Judging!.Pools.Single().Inputs;

        var another = new AnotherTry(grades.Judging).For(student);

        Assert.NotNull(another);
        Assert.NotEqual(Ada.GivensOf(DoughTemperatureExercise.Id), another.Givens);
        var place = Enumerable.Range(0, pool.Count).Single(place => another.Givens.All(given => pool[place][given.Key] == given.Value));
        Assert.DoesNotContain(place, grades.Judging.Choices.Single(choice => choice.Student == Ada.Who.Id).Places);
    }

    [Fact]
    public void Who_lost_nothing_needs_no_other_numbers()
    {
        var (grades, student) = Graded("=3*want-sum");

        Assert.Null(new AnotherTry(grades.Judging!).For(student));
    }

    private static (ClassGrades Grades, StudentGrade Student) Graded(string temperature)
    {
        var book = new ReturnedBook(Ada)
            .Answer("sum", "=flour+room+friction")
            .Answer("temperature", temperature)
            .Answer("ice", "=water*(tap-temperature)/(tap+112)")
            .Answer("ice_share", "=ice/water*share");
        var grades = ClassGrader.Grade(Class, [book.As("ada.xlsx")]);
        return (grades, grades.Students[0]);
    }
}
