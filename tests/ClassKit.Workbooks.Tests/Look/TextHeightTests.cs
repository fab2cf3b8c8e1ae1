using ClassKit.Workbooks.Look;

namespace ClassKit.Workbooks.Tests.Look;

public sealed class TextHeightTests
{
    [Theory]
    [InlineData("", 10, 1)]
    [InlineData("short", 10, 1)]
    [InlineData("two words that wrap", 10, 2)]
    [InlineData("one\ntwo\n\nfour", 10, 4)]
    [InlineData("averyveryverylongword", 10, 3)]
    public void Text_breaks_between_words_and_at_line_breaks(string text, double width, int lines)
    {
        Assert.Equal(lines, TextHeight.LinesOf(text, width));
    }

    [Fact]
    public void Wide_scripts_take_twice_the_room()
    {
        Assert.Equal(1, TextHeight.LinesOf("abcdefgh", 9));
        Assert.Equal(2, TextHeight.LinesOf("発酵発酵発酵発酵", 9));
    }
}
