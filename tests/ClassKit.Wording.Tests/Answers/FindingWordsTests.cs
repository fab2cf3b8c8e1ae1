using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings;
using ClassKit.Wording.Outcomes;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Answers;

public sealed class FindingWordsTests
{
    public static TheoryData<AnswerFinding, string> Said =>
        new()
        {
            { new AnswerFinding.OtherUnit("oz"), "right in oz; this cell asks for g" },
            { new AnswerFinding.OffByTens(1000, IsTooLarge: true), "1000 times what it should be" },
            { new AnswerFinding.OffByTens(10, IsTooLarge: false), "1/10 of what it should be" },
            {
                new AnswerFinding.RoundsAnswer(0.1m, RoundingDirection.Nearest),
                "the answer is rounded to one decimal, which is more than this part allows"
            },
            { new AnswerFinding.RoundsAnswer(2.5m, RoundingDirection.Down), "rounded to a multiple of 2.5 below it" },
            {
                new AnswerFinding.RoundsEarlier(Parts.Of("%"), 0.01m, RoundingDirection.Up),
                "an earlier answer was rounded to whole percent above it before it was used"
            },
            {
                new AnswerFinding.RoundsWithin("ROUND(share,2)", "share", new Dictionary<string, string> { ["share"] = "C8" }),
                "The method is right, but ROUND(C8,2) rounds on the way, and that carries through."
            },
            {
                new AnswerFinding.RoundsWithin(
                    "flour/share",
                    "ROUNDUP(flour/share,0)",
                    new Dictionary<string, string> { ["flour"] = "C7", ["share"] = "C8" }
                ),
                "The method is right, but what comes out is not rounded, and here you need to round up."
            },
            { new AnswerFinding.TypedRounded(2), "it is rounded to two decimals" },
            { new AnswerFinding.TypedFromRounded(0), "it looks as if an earlier answer was rounded to a whole number" },
            { new AnswerFinding.ErrorValue(CellError.DivideByZero), "#DIV/0!" },
            {
                new AnswerFinding.ErrorValue(CellError.Value) { By = new("B8", UnusableCellKind.Words, new("Water"), "C8") },
                "Your formula comes to #VALUE!. B8 holds words (“Water”); the number beside them stands in C8."
            },
            {
                new AnswerFinding.ErrorValue(CellError.Value) { By = new("C25", UnusableCellKind.Words, new("1560 g")) },
                "C25 holds “1560 g”, which a spreadsheet takes for words. Type the number alone there."
            },
            {
                new AnswerFinding.ErrorValue(CellError.Value) { By = new("C6", UnusableCellKind.Words, new("Value")) },
                "C6 holds words (“Value”), not a number: look which cell you meant."
            },
            {
                new AnswerFinding.ErrorValue(CellError.Reference) { By = new("C13", UnusableCellKind.Itself) },
                "It points at C13, its own cell. Take C13 out of it."
            },
            {
                new AnswerFinding.ErrorValue(CellError.DivideByZero) { By = new("C12", UnusableCellKind.Empty) },
                "C12, which it uses, is empty: look which cell you meant."
            },
            { new AnswerFinding.Empty("B5"), "Nothing was entered in B5." },
            { new AnswerFinding.WrongTurn(Parts.Divided), "Multiply by the share." },
            { new AnswerFinding.NotFollowing([], Varies: false), "it comes to the same number whatever they are" },
            { new AnswerFinding.NotFollowing([], Varies: true), "it comes to something else than the right method does" },
            {
                new AnswerFinding.NotFollowing([new(Parts.Flour, 500, "C7")], Varies: true),
                "you typed 500\u00A0g, where the sheet has Flour in C7. Point to that cell instead."
            },
            { new AnswerFinding.FollowsThrough([Parts.Of()], MethodShown: true), "carries on the slip in part “How much water”" },
            {
                new AnswerFinding.Waits([Parts.Of(), Parts.Of(ask: "How much salt?")]),
                "lacks a number in parts “How much water” and “How much salt”"
            },
            { new AnswerFinding.Impossible(-1.5), "cannot be" },
            { new AnswerFinding.HundredfoldPercent(439), "holds 439, which other cells take for 43900 %: for 439 % a cell holds 4.39" },
            { new AnswerFinding.NotEvaluated(new Obstacle.ChangesEachTime("NOW")), "(NOW gives another value each time)" },
            { new AnswerFinding.OptionInWords(new("C because it is warm")), "“C because it is warm” is more than a letter." },
            { new AnswerFinding.NoOption(new("see my notes"), 5), "“see my notes” is none of the letters A to E" },
            { new AnswerFinding.NotEvaluated(new Obstacle.NoTable("Will")), "(there is no table called Will)" },
        };

    [Theory]
    [MemberData(nameof(Said))]
    public void A_finding_is_said_with_its_numbers_and_cells(AnswerFinding finding, string words) =>
        Assert.Contains(words, Parts.Told(finding), StringComparison.Ordinal);

    /// <summary>“Not right yet” stood over words that began “The method is right”.</summary>
    [Fact]
    public void A_right_method_that_was_rounded_is_headed_as_one()
    {
        AnswerFinding[] rounded =
        [
            new AnswerFinding.RoundsAnswer(2.5m, RoundingDirection.Down),
            new AnswerFinding.RoundsEarlier(Parts.Of(), 0.01m, RoundingDirection.Up),
            new AnswerFinding.RoundsWithin("ROUND(share,2)", "share", new Dictionary<string, string>()),
            new AnswerFinding.TypedRounded(2),
            new AnswerFinding.TypedFromRounded(0),
        ];
        Assert.All(rounded, finding => Assert.StartsWith("Right ", Headed(finding), StringComparison.Ordinal));
        Assert.Equal("Not right yet", Headed(new AnswerFinding.NotRight()));

        static string Headed(AnswerFinding finding) => OutcomeText.ToStudent(Parts.Graded(Parts.Dough(Parts.Of()), Parts.Of(), [finding]));
    }

    [Fact]
    public void Whether_a_formula_was_asked_for_decides_what_is_said_of_a_typed_number()
    {
        Assert.Equal("Right.", Parts.Told(new AnswerFinding.RightTyped(), Parts.Of(formulaAsked: false)));
        Assert.Contains("A formula was asked for", Parts.Told(new AnswerFinding.RightTyped()), StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_beside_a_finding_is_said_after_it() =>
        Assert.Equal(
            "Right. The cell held the formula as text, so you saw no number; it was worked out here as though you had entered it. Set the cell's format to General before you type.",
            Parts.Told([new AnswerFinding.RightTyped(), new AnswerFinding.StoodAsText()], Parts.Of(formulaAsked: false))
        );

    [Fact]
    public void Every_finding_there_is_has_words() =>
        Assert.All(Every.Of<AnswerFinding>(), finding => Assert.NotEmpty(Parts.Told(finding)));
}
