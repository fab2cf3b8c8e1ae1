using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Tests.Texts;

/// <summary>Whoever reads a report reads no name of a program.</summary>
public sealed class PartNameTests
{
    [Theory]
    [InlineData("water_temp", "water temperature")]
    [InlineData("oven_c", "oven")]
    [InlineData("water_f", "water")]
    [InlineData("active_dry", "active dry")]
    [InlineData("ice", "ice")]
    public void An_id_is_said_in_words(string id, string said) => Assert.Equal(said, PartName.Of(id));
}
