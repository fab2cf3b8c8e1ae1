using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Answers;

public sealed class UnreadableWordsTests
{
    private static AnswerFinding.NoNumber No(UnreadableKind kind, string text, string found, int character) =>
        new(kind, new(text), text.Length, new(found), character);

    public static TheoryData<AnswerFinding, string> Said =>
        new()
        {
            { No(UnreadableKind.NoDigit, "no idea", "", 1), "there is no digit in it" },
            { No(UnreadableKind.Character, "182 ±", "±", 5), "the sign “±” at character 5" },
            { No(UnreadableKind.SecondNumber, "182 ± 5", "5", 7), "“5” at character 7 is a second one" },
            { No(UnreadableKind.Word, "maybe 182", "maybe", 1), "the word “maybe” at character 1" },
            { No(UnreadableKind.Character, "182\u0007", "\u0007", 4), "U+0007" },
            { new AnswerFinding.LacksEqualsSign(new("C7*C8")), "a formula begins with =" },
            { new AnswerFinding.BrokenFormula(new(SyntaxFoundKind.Sign, ")"), 8), "from character 8 on" },
            { new AnswerFinding.BrokenFormula(new(SyntaxFoundKind.End), 8), "is not finished: a bracket is opened and not closed" },
            { new AnswerFinding.NamesNoCell(new("flour")), "“flour” in it is no cell" },
        };

    [Theory]
    [MemberData(nameof(Said))]
    public void The_character_or_word_in_the_way_is_named_with_its_place(AnswerFinding finding, string words) =>
        Assert.Contains(words, Parts.Told(finding), StringComparison.Ordinal);

    [Fact]
    public void A_long_text_is_quoted_by_its_beginning() =>
        Assert.Contains(
            $"“{new string('x', 39)}…”",
            Parts.Told(new AnswerFinding.LacksEqualsSign(new(new string('x', 60)))),
            StringComparison.Ordinal
        );

    [Fact]
    public void What_turns_the_direction_of_writing_does_not_leave_its_quotation() => // Unicode Standard Annex #9: an isolate ends where it is popped.
        Assert.Contains(
            "“\u2068C7*\u202EC8\u2069”",
            Parts.Told(new AnswerFinding.LacksEqualsSign(new("C7*\u202EC8"))),
            StringComparison.Ordinal
        );
}
