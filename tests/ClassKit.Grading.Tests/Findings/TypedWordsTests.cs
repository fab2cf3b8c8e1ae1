using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.Tests.Findings;

public sealed class TypedWordsTests
{
    private static string Marked(PartlyTyped text) => string.Concat(text.Pieces.Select(piece => piece.IsTyped ? $"[{piece.Text}]" : piece.Text));

    [Theory]
    [InlineData("there is no table called Will", "=SUM(will[Flour])", "there is no table called [Will]")]
    [InlineData("the name the_cell stands for no formula", "=the_cell*2", "[the] name [the_cell] stands for no formula")]
    [InlineData("found `Rose@example`, expected the end", "=Rose@example", "found `[Rose@example]`, expected the end")]
    [InlineData("formulas nested too deeply", "=A1", "formulas nested too deeply")]
    [InlineData("the name rise stands for no formula", "=sunrise+rise", "the name [rise] stands for no formula")]
    [InlineData("the name rise stands for no formula", "=sunrise+rise2", "the name rise stands for no formula")]
    [InlineData("", "=A1", "")]
    public void Words_that_were_typed_are_the_students_own(string reason, string typed, string expected) =>
        Assert.Equal(expected, Marked(TypedWords.In(reason, word => TypedWords.Stands(typed, word))));

    [Theory]
    [InlineData("sheet 'Will May' holds 'Rose' where a number should be", "sheet ['Will May'] holds ['Rose'] where a number should be")]
    [InlineData("sheet 'O'Hara' is listed", "sheet ['O'Hara'] is listed")]
    [InlineData("'Rose'!B2 holds 'x'", "['Rose']!B2 holds ['x']")]
    [InlineData("the student's own and the class's", "the student's own and the class's")]
    [InlineData("The file is empty.", "The file is empty.")]
    public void What_a_refusal_quotes_is_the_students_own(string refusal, string expected) => Assert.Equal(expected, Marked(TypedWords.InQuotes(refusal)));
}
