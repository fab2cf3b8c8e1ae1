using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Prose;

public sealed class SentenceTests
{
    [Fact]
    public void Every_sentence_of_every_kind_of_page_begins_with_a_capital_letter()
    {
        foreach (var (file, page) in SamplePages.All)
            Assert.Equal((file, ""), (file, string.Join('\n', Sentences.BeginningLow(page))));
    }

    [Fact]
    public void No_sentence_touches_the_one_before()
    {
        foreach (var (file, page) in SamplePages.All)
            Assert.Equal((file, ""), (file, string.Join('\n', Sentences.Touching(page))));
    }

    [Theory]
    [InlineData("<p>It is so.<a href=\"#a\">Read it.</a></p>", "so.Read")]
    [InlineData("<p>It is so. <a href=\"#a\">Read it.</a></p>", "")]
    [InlineData("<p>It is so.</p><p>Read it.</p>", "")]
    public void Touching_sentences_are_seen(string html, string touching) =>
        Assert.Equal(touching, string.Join('\n', Sentences.Touching(html)));

    [Theory]
    [InlineData("<p>it begins low.</p>", "it begins low.")]
    [InlineData("<p>It ends. and goes on.</p>", ". and")]
    [InlineData("<td>done from a little below on.</td>", "done from a little below on.")]
    [InlineData("<li><strong>Name:</strong> Text. <em>more</em> text</li>", ". more")]
    [InlineData("<dd>the error #DIV/0!</dd>", "")]
    [InlineData("<td>oven 1 at 190 °C</td>", "")]
    [InlineData("<li>ada.xlsx: The file is cut off.</li>", "")]
    [InlineData("<p>J. Food Sci. Technol. 57 (2020), e.g. this.</p>", "")]
    [InlineData("<p>All is well. <code>=a*b</code> Right.</p><script>low. low</script>", "")]
    [InlineData("<p>1.5 mL of it.</p>", "")]
    public void Low_beginnings_are_told_from_other_words(string html, string low) =>
        Assert.Equal(low, string.Join('\n', Sentences.BeginningLow(html)));
}
