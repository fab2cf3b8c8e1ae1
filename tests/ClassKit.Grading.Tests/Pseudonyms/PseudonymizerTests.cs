using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Pseudonyms;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests.Pseudonyms;

/// <summary>With the class list, the exercises and the seed anybody deals the same numbers, and sees whose grades are whose.</summary>
public sealed class PseudonymizerTests
{
    private static PseudonymSecret Secret(byte first) => new([first, .. new byte[PseudonymSecret.Bytes - 1]]);

    /// <summary>Who has the class list, the lesson and the seed, and so the deal, has no pseudonym without the secret.</summary>
    [Fact]
    public void Pseudonyms_hang_on_the_secret_and_on_the_deal_and_on_nothing_else()
    {
        List<string> Of(DealtClass dealt, byte secret) =>
            [.. new PseudonymKey(dealt, Secret(secret)).Entries.Select(entry => entry.Pseudonym)];
        var other = Class with { Seed = Class.Seed + 1 };

        Assert.Equal(Of(Class, 1), Of(Class, 1));
        Assert.Empty(Of(Class, 1).Intersect(Of(Class, 2)));
        Assert.Empty(Of(Class, 1).Intersect(Of(other, 1)));
    }

    [Theory]
    [InlineData("", false)]
    [InlineData("00112233445566778899aabbccddeeff00112233445566778899AABBCCDDEEFF\n", true)]
    [InlineData("00112233445566778899aabbccddeeff00112233445566778899aabbccddeef", false)]
    [InlineData("00112233445566778899aabbccddeeff00112233445566778899aabbccddeefg", false)]
    public void A_secret_is_read_back_or_told_to_be_none(string text, bool isOne) =>
        Assert.Equal(isOne ? text.Trim().ToLowerInvariant() : null, PseudonymSecret.Parse(text)?.Text);

    [Fact]
    public void Grades_without_names_hold_nothing_from_which_the_class_is_dealt_again()
    {
        var dealt = Class with { Seed = 2026 };

        var hidden = Pseudonymizer
            .Apply(ClassGrader.Grade(dealt, [new ReturnedBook(Ada).As("ada-berg.xlsx")]), new PseudonymKey(dealt, Secret(1)))
            .Dealt;

        Assert.Equal((0UL, null), (hidden.Seed, hidden.Identity));
        Assert.DoesNotContain(hidden.Students, seat => Class.Students.Any(known => known.Who.Id == seat.Who.Id));
    }

    /// <summary>The one with large print, more time or a day of their own is known on sight; so is who handed in at two in the morning.</summary>
    [Fact]
    public void Grades_without_names_tell_no_arrangement_and_no_hour()
    {
        var dealt = Class with
        {
            Students =
            [
                .. Class.Students.Select(seat => seat.Who.Id == Ada.Who.Id ? seat with { LargePrint = true, ExtraTime = 0.25m } : seat),
            ],
        };

        var grades = ClassGrader.Grade(
            dealt,
            [new ReturnedBook(Ada).As("ada-berg.xlsx") with { Modified = new DateTime(2026, 11, 20, 2, 13, 0, DateTimeKind.Utc) }]
        );
        Assert.NotNull(grades.Files[0].Modified);

        var hidden = Pseudonymizer.Apply(grades, new PseudonymKey(dealt, Secret(1)));

        Assert.DoesNotContain(hidden.Dealt.Students, seat => seat.HasArrangement);
        Assert.All(hidden.Files, file => Assert.Null(file.Modified));
    }
}
