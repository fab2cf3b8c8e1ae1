using System.Text.RegularExpressions;

namespace ClassKit.House.Tests.Rules;

/// <summary>
/// Names in braces are taken out of a text in one place, when it is read, and values put in by one function: <c>TextTemplate</c>. Nobody
/// else searches texts for braces.
/// </summary>
public partial class TextPlacesTests
{
    [Fact]
    public void Nobody_but_the_template_searches_for_names_in_braces() =>
        Assert.Empty(
            Directory
                .EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.*", SearchOption.AllDirectories)
                .Where(file =>
                    Path.GetExtension(file) is ".cs" or ".razor"
                    && !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                    && Path.GetFileName(file) != "TextTemplate.cs"
                )
                .SelectMany(file => File.ReadLines(file).Where(Searches).Select(line => $"{Path.GetFileName(file)}: {line.Trim()}"))
        );

    [Theory]
    [InlineData("""text.Replace($"{{{name}}}", value, StringComparison.Ordinal)""", true)]
    [InlineData("""text.Replace("{students}", students)""", true)]
    [InlineData("""text.Replace("{" + name + "}", value)""", true)]
    [InlineData("""[GeneratedRegex(@"\{(?<name>[^{}]*)\}")]""", true)]
    [InlineData("""[GeneratedRegex("\\{[a-z]+\\}")]""", true)]
    [InlineData("""text.IndexOf('{')""", true)]
    [InlineData("""text.Replace("'", "''", StringComparison.Ordinal)""", false)]
    [InlineData("""[GeneratedRegex(@"^[0-9]{1,4}$")]""", false)]
    [InlineData("""('{', _) => (TokenKind.LeftBrace, 1),""", false)]
    public void Searching_for_braces_is_told_from_other_code(string line, bool isOne) => Assert.Equal(isOne, Searches(line));

    private static bool Searches(string line) => Search().IsMatch(line);

    [GeneratedRegex("""(Replace|IndexOf|Split)\(\$?@?["']\{|Regex\(.*\\\{""")]
    private static partial Regex Search();
}
