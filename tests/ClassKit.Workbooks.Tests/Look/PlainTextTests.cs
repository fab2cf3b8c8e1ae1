using ClassKit.Workbooks.Look;

namespace ClassKit.Workbooks.Tests.Look;

public sealed class PlainTextTests
{
    [Theory]
    [InlineData("Mix **hard** and *rest* the `dough`.", "Mix hard and rest the dough.")]
    [InlineData("One\ntwo", "One two")]
    [InlineData("One  \ntwo", "One\ntwo")]
    [InlineData("One\n\ntwo", "One\n\ntwo")]
    [InlineData("- flour\n- water\n  and ice", "• flour\n• water and ice")]
    [InlineData("3. fold\n4. rest", "3. fold\n4. rest")]
    [InlineData("1. fold\n   - once", "1. fold\n   • once")]
    [InlineData("| a | b |\n|---|---|\n| 1 | 2 |", "a | b\n1 | 2")]
    [InlineData("A &amp; B &lt; C", "A & B < C")]
    [InlineData("[the table](page.html)", "the table")]
    [InlineData("", "")]
    public void Markdown_becomes_lines_that_read_well_in_a_cell(string markdown, string text)
    {
        Assert.Equal(text, PlainText.From(markdown));
    }
}
