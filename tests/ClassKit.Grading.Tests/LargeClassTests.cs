using System.Collections;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>The time that a workbook takes does not depend on how large the class is.</summary>
public sealed class LargeClassTests
{
    /// <summary>
    /// Whoever's workbook bears an id and the numbers dealt to it is not held against the others: among 10,000 that took four times as long
    /// as judging. Trying other numbers in a cell or two changes nothing.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public void A_workbook_with_its_own_numbers_is_held_against_nobody_else(int tried)
    {
        var students = new CountedStudents(Class.Students);
        var grader = new ClassGrader(Class with { Students = students });
        var book = new ReturnedBook(Ada).Answer("sum", "=flour+room+friction").Answer("temperature", "=3*want-sum");
        foreach (var given in new[] { "flour", "room" }.Take(tried))
            book.Overwrite(given, 19);
        // Inputs of the whole class are gathered once.
        grader.Judge(new ReturnedBook(Ben).Answer("sum", "=flour+room+friction").As("ben-okoye.xlsx"));
        students.Looks = 0;

        var grade = grader.Judge(book.As("ada-berg.xlsx")).Grade!;

        Assert.Equal(Outcome.Sound, grade.Answers[0].Outcome);
        Assert.Equal(0, students.Looks);
    }

    /// <summary>Students, and how often somebody went through them.</summary>
    private sealed class CountedStudents(IReadOnlyList<DealtStudent> students) : IReadOnlyList<DealtStudent>
    {
        public int Looks { get; set; }

        public int Count => students.Count;

        public DealtStudent this[int index] => students[index];

        public IEnumerator<DealtStudent> GetEnumerator()
        {
            Looks++;
            return students.GetEnumerator();
        }

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
