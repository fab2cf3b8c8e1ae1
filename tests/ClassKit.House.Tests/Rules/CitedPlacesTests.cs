using System.Text.RegularExpressions;
using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>
/// A source is a publication by its author, title and year; what no publication says is called common practice. Blogs, shops and reprints
/// on the web are no sources: they change, go, and answer to nobody.
/// </summary>
public partial class CitedPlacesTests
{
    /// <summary>
    /// Names that no source is: of namespaces, standards, programs, invented addresses, and of files that students are sent in place of a
    /// workbook.
    /// </summary>
    private static readonly string[] Others =
    [
        "example.org",
        "w3.org",
        "schema.org",
        "openxmlformats.org",
        "oclc.org",
        "purl.org",
        "imsglobal.org",
        "docs.google.com",
        "microsoft.com",
        "github.com",
        "debian.org",
        "libreoffice.org",
        "oasis-open.org",
    ];

    [Theory]
    [InlineData("src")]
    [InlineData("tests")]
    [InlineData("lessons")]
    [InlineData("rubrics")]
    [InlineData("demo-cohort")]
    public void No_site_is_cited(string folder)
    {
        var cited = SourceLine
            .Of(folder, "*.cs", "*.csv", "*.md", "*.razor")
            .Where(line => !line.File.EndsWith($"/{nameof(CitedPlacesTests)}.cs", StringComparison.Ordinal) && Sites(line.Text).Any())
            .Select(line => line.Shown)
            .ToList();
        Assert.True(cited.Count == 0, $"{string.Join('\n', cited)}\nName author, title and year, or say that it is common practice.");
    }

    [Theory]
    [InlineData("// breadsandmore.com/dough-2: 1400 g at 173.5 %", true)]
    [InlineData("/// quoted at somebody.blogspot.com, \"Dough\"", true)]
    [InlineData("// ada@example.org", false)]
    [InlineData("// W. Gisslen, Professional Baking, 7th edition, 2016", false)]
    [InlineData("return run.Net(value).Edu;", false)]
    public void A_line_that_cites_a_site_is_known(string line, bool cites) => Assert.Equal(cites, Sites(line).Any());

    private static IEnumerable<string> Sites(string line) =>
        Site()
            .Matches(line)
            .Select(match => match.Value)
            .Where(site => !Others.Any(other => site == other || site.EndsWith("." + other, StringComparison.Ordinal)));

    [GeneratedRegex(@"\b[a-z0-9-]{2,}(?:\.[a-z0-9-]{2,})*\.(?:com|org|edu|ca|info|co\.uk)\b(?![(\w])")]
    private static partial Regex Site();
}
