using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>What cannot be read says what stands in the way, and where.</summary>
public sealed class UnreadableTextTests
{
    [Theory]
    [InlineData("no idea", "there is no digit in it")]
    [InlineData("182 ±", "the sign “±” at character 5")]
    [InlineData("182 ± 5", "“5” at character 7 is a second one")]
    [InlineData("maybe 182", "the word “maybe” at character 1")]
    [InlineData("180-185", "“185” at character 5 is a second one")]
    [InlineData("180 to 185", "“185” at character 8 is a second one")]
    [InlineData("1.2.3 g", "“1.2.3” at character 1")]
    [InlineData("x = 12..5", "“12..5” at character 5")]
    [InlineData("$182", "the sign “$” at character 1")]
    [InlineData("182 dozen", "the word “dozen” at character 5")]
    [InlineData("<182", "the sign “<” at character 1")]
    [InlineData("182\u0007", "U+0007")]
    [InlineData("C7*C8", "a formula begins with =")]
    [InlineData("=C7*(C8", "from character 8 on")]
    [InlineData("=C7*#", "from character 5 on")]
    [InlineData("=flour water", "“flour” in it is no cell")]
    [InlineData("\u200B\u200B", "there is no digit in it")]
    public void The_note_names_the_character_or_word_and_its_place(string text, string words)
    {
        var grade = Grade(new ReturnedBook(Ada).AnswerInWords("sum", text), "sum");

        Assert.Equal(Outcome.Unreadable, grade.Outcome);
        Assert.Contains(words, grade.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_text_of_a_cell_is_read_or_told_what_is_wrong_with_it()
    {
        var random = new Random(17);
        const string alphabet = "0123456789.,' /%*+-=±<>()²½·×÷eExgCo°$€“”\u0661\u066B\u200E\u00A0\uD83C\uDF5E\"#&:;@[]\\^_{|}~\u0007é";
        for (var draw = 0; draw < 20_000; draw++)
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(1, 14)).Select(_ => alphabet[random.Next(alphabet.Length)]));
            if (text.Trim().Length == 0 || AnswerText.Read(text, "g").Count > 0) continue;

            var found = UnreadableText.In(text, "g");

            Assert.InRange(found.Place, 1, text.Length);
            Assert.Contains(found.Found, text, StringComparison.Ordinal);
        }
    }
}
