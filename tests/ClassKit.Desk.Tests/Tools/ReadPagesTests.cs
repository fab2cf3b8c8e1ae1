namespace ClassKit.Desk.Tests.Tools;

/// <summary>What reads every page finds what strangers found.</summary>
public sealed class ReadPagesTests
{
    [Theory]
    [InlineData("`due` stands `Monday`", true)]
    [InlineData("1 file lie in this round", true)]
    [InlineData("How much instant yeast?. 3 of 9", true)]
    [InlineData("Look at the the list", true)]
    [InlineData("“due” stands “Monday”", false)]
    [InlineData("1 file lies in this round. How much yeast? 3 of 9", false)]
    [InlineData("<textarea>`due`</textarea>, all that that says", false)]
    public void It_finds_what_strangers_stumbled_over(string words, bool isFound) =>
        Assert.Equal(isFound, ReadPages.Faults($"<header class=\"rail\"></header><p>{words}</p>").Any());
}
