using System.Text.RegularExpressions;
using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>What a unit of an exercise measures is said by <c>Unit</c>, and nobody works it out of its sign again.</summary>
public partial class UnitSignTests
{
    /// <summary>The rooms that know exercises; units of bench sums and of lessons are others.</summary>
    private static readonly string[] Rooms = ["Exercises", "Grading", "Wording", "Workbooks", "Content", "ItemBanks", "Pages", "UseCases"];

    [Fact]
    public void Nobody_asks_for_the_sign_of_a_unit()
    {
        var asked = SourceLine
            .Of("src")
            .Where(line => Rooms.Any(room => line.File.Contains($"ClassKit.{room}/", StringComparison.Ordinal)) && Asks(line.Text))
            .Select(line => line.Shown)
            .ToList();

        Assert.True(
            asked.Count == 0,
            $"{string.Join('\n', asked)}\nAsk the unit for its kind, or give it a property that says what is meant."
        );
    }

    [Theory]
    [InlineData("var isTemperature = part.Unit is \"°C\" or \"°F\" or \"K\";", true)]
    [InlineData("private static bool IsDegrees(Unit unit) => unit.Sign is \"°C\";", true)]
    [InlineData("if (part.Unit.Sign == \"%\")", true)]
    [InlineData("part.Unit != \"%\" ? 1 : 2", true)]
    [InlineData("unit switch { \"g\" => 1 }", true)]
    [InlineData("part.Unit.IsTemperature", false)]
    [InlineData("unit.Code switch", false)]
    [InlineData("fact.Unit is null", false)]
    public void A_line_that_asks_is_known(string line, bool asks) => Assert.Equal(asks, Asks(line));

    private static bool Asks(string line) => Asking().IsMatch(line);

    [GeneratedRegex(@"\b[uU]nit(\.Sign)?\s*(?:(?:is|==|!=)\s+(?:not\s+)?\(?""|switch\s*\{\s*"")")]
    private static partial Regex Asking();
}
