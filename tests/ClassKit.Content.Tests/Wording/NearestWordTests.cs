using ClassKit.Content.Wording;

namespace ClassKit.Content.Tests.Wording;

public sealed class NearestWordTests
{
    [Theory]
    // Damerau 1964 counts a letter added, left out, changed, or two neighbours swapped as one slip each.
    [InlineData("flour", "flour", 0)]
    [InlineData("flour", "flours", 1)]
    [InlineData("flour", "flur", 1)]
    [InlineData("flour", "floor", 1)]
    [InlineData("flour", "fluor", 1)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("", "abc", 3)]
    public void Slips_are_counted(string left, string right, int slips)
    {
        Assert.Equal(slips, EditDistance.Between(left, right));
        Assert.Equal(slips, EditDistance.Between(right, left));
    }

    [Theory]
    [InlineData("Wole milk", "Whole milk")]
    [InlineData("WHOLE MILK", "Whole milk")]
    [InlineData("butermilk", "Buttermilk")]
    [InlineData("quinoa", null)]
    [InlineData("", null)]
    public void The_nearest_word_is_offered_only_when_it_is_near(string typed, string? nearest) =>
        Assert.Equal(nearest, NearestWord.To(typed, ["Whole milk", "Skim milk", "Buttermilk"]));
}
