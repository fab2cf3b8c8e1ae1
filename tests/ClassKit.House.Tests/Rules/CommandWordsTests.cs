using System.Text.RegularExpressions;
using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>Commands and their options are words of one front only: what a user can do is a fact (<c>Remedy</c>) everywhere else.</summary>
public partial class CommandWordsTests
{
    [Fact]
    public void No_room_but_the_command_lines_own_speaks_of_commands() =>
        Assert.Empty(
            CompiledHouse
                .Projects.Where(project => project != "classkit")
                .SelectMany(project => CompiledHouse.Texts(project).Where(SpeaksOfCommands).Select(text => $"{project}: {text}"))
        );

    [Theory]
    [InlineData("Name the folder that `classkit deal` made.", true)]
    [InlineData("`classkit ", true)]
    [InlineData("classkit check names the line", true)]
    [InlineData("and name it with --class.", true)]
    [InlineData("grade again with <code>--take-over</code>", true)]
    [InlineData("Name a folder that ClassKit made.", false)]
    [InlineData("<!--students-->", false)]
    public void Commands_are_told_from_other_words(string text, bool isOne) => Assert.Equal(isOne, SpeaksOfCommands(text));

    private static bool SpeaksOfCommands(string text) => Commands().IsMatch(text);

    [GeneratedRegex(@"`classkit\b|\bclasskit [a-z]|(^|[\s`>(“])--[a-z]", RegexOptions.CultureInvariant)]
    private static partial Regex Commands();
}
