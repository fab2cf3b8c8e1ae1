using ClassKit.Grading.Answers;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests.Answers;

/// <summary>What cannot be read says what stands in the way, and where.</summary>
public sealed class UnreadableTextTests
{
    [Theory]
    [InlineData("no idea", UnreadableKind.NoDigit, "", 1)]
    [InlineData("182 ±", UnreadableKind.Character, "±", 5)]
    [InlineData("182 ± 5", UnreadableKind.SecondNumber, "5", 7)]
    [InlineData("maybe 182", UnreadableKind.Word, "maybe", 1)]
    [InlineData("180-185", UnreadableKind.SecondNumber, "185", 5)]
    [InlineData("180 to 185", UnreadableKind.SecondNumber, "185", 8)]
    [InlineData("1.2.3 g", UnreadableKind.Marks, "1.2.3", 1)]
    [InlineData("x = 12..5", UnreadableKind.Marks, "12..5", 5)]
    [InlineData("$182", UnreadableKind.Character, "$", 1)]
    [InlineData("182 dozen", UnreadableKind.Word, "dozen", 5)]
    [InlineData("<182", UnreadableKind.Character, "<", 1)]
    [InlineData("182\u0007", UnreadableKind.Character, "\u0007", 4)]
    [InlineData("\u200B\u200B", UnreadableKind.NoDigit, "", 1)]
    public void The_character_or_word_in_the_way_is_found_with_its_place(string text, UnreadableKind kind, string found, int character) =>
        Assert.Equal(new AnswerFinding.NoNumber(kind, new(text), text.Length, new(found), character), FoundIn(text));

    [Fact]
    public void A_formula_without_its_sign_is_none() => Assert.Equal(new AnswerFinding.LacksEqualsSign(new("C7*C8")), FoundIn("C7*C8"));

    [Theory]
    [InlineData("=C7*(C8", 8)]
    [InlineData("=C7*#", 5)]
    public void A_broken_formula_is_broken_at_a_character(string text, int character) =>
        Assert.Equal(character, Assert.IsType<AnswerFinding.BrokenFormula>(FoundIn(text)).Character);

    [Fact]
    public void A_formula_of_words_names_no_cell() => Assert.Equal(new AnswerFinding.NamesNoCell(new("flour")), FoundIn("=flour water"));

    private static AnswerFinding FoundIn(string text)
    {
        var grade = Grade(new ReturnedBook(Ada).AnswerInWords("sum", text), "sum");
        Assert.Equal(Outcome.Unreadable, grade.Outcome);
        return Assert.Single(grade.Findings);
    }

    [Fact]
    public void Any_text_of_a_cell_is_read_or_told_what_is_wrong_with_it()
    {
        var random = new Random(17);
        const string alphabet = "0123456789.,' /%*+-=±<>()²½·×÷eExgCo°$€“”\u0661\u066B\u200E\u00A0\uD83C\uDF5E\"#&:;@[]\\^_{|}~\u0007é";
        for (var draw = 0; draw < 20_000; draw++)
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(1, 14)).Select(_ => alphabet[random.Next(alphabet.Length)]));
            if (text.Trim().Length == 0 || AnswerText.Read(text, "g").Count > 0)
                continue;

            var found = UnreadableText.In(text, "g");

            Assert.InRange(found.Place, 1, text.Length);
            Assert.Contains(found.Found, text, StringComparison.Ordinal);
        }
    }
}
