using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Tests.Authoring;

public sealed class TextTemplateTests
{
    [Theory]
    [InlineData("Weigh it.", "Weigh it.")]
    [InlineData("{a}", "<a>")]
    [InlineData("{a}{b} and {a}", "<a><b> and <a>")]
    [InlineData("Mix {a} in {a bowl}, {}.", "Mix <a> in <a bowl>, <>.")]
    [InlineData("{{a}}", "{<a>}")]
    [InlineData("open { and\nclosed }", "open { and\nclosed }")]
    [InlineData("", "")]
    public void Every_name_in_braces_is_a_place_and_nothing_else_moves(string written, string filled) =>
        Assert.Equal(filled, TextTemplate.Parse(written).Fill(place => $"<{place.Name}>"));

    [Theory]
    [InlineData("Weigh it.")]
    [InlineData("{a} {b c} {{x}} {")]
    public void Where_nothing_is_known_the_text_stays_as_it_was_written(string written)
    {
        Assert.Equal(written, TextTemplate.Parse(written).Fill(_ => null));
        Assert.Equal(written, TextTemplate.Parse(written).Written);
    }

    /// <summary>A value that looks like a name is a value: filling is done once.</summary>
    [Fact]
    public void What_is_put_in_is_not_searched_again() =>
        Assert.Equal("{b} {b}", TextTemplate.Parse("{a} {b}").Fill(place => place.Name == "a" ? "{b}" : null));

    [Fact]
    public void Every_place_knows_its_line() =>
        Assert.Equal(
            [("a", 1), ("b", 2), ("c", 2), ("d", 4)],
            TextTemplate.Parse("x {a}\n{b} {c}\n\n{d}").Placeholders.Select(place => (place.Name, place.Line))
        );

    [Fact]
    public void To_search_for_words_places_are_blank_and_nothing_moves() =>
        Assert.Equal("Melt          in milk", TextTemplate.Parse("Melt {butter} in milk").OwnWords);

    [Fact]
    public void Texts_are_equal_if_they_read_alike_and_stand_for_the_same()
    {
        Assert.Equal(TextTemplate.Parse("{a}"), TextTemplate.Parse("{a}"));
        Assert.NotEqual(TextTemplate.Parse("{a}"), TextTemplate.Parse("{a}", (name, line) => new($"{{{name}}}", "popovers." + name, line)));
    }
}
