using ClassKit.Grading.Pseudonyms;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests.Pseudonyms;

/// <summary>With the class list, the exercises and the seed anybody deals the same numbers, and sees whose grades are whose.</summary>
public sealed class PseudonymizerTests
{
    [Fact]
    public void Grades_without_names_hold_nothing_from_which_the_class_is_dealt_again()
    {
        var dealt = Class with { Seed = 2026 };

        var hidden = Pseudonymizer
            .Apply(ClassGrader.Grade(dealt, [new ReturnedBook(Ada).As("ada-berg.xlsx")]), new PseudonymKey(dealt))
            .Dealt;

        Assert.Equal((0UL, null), (hidden.Seed, hidden.Identity));
        Assert.DoesNotContain(hidden.Students, seat => Class.Students.Any(known => known.Who.Id == seat.Who.Id));
    }
}
