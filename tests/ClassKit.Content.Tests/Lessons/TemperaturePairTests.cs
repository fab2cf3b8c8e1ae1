using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Quantities;

namespace ClassKit.Content.Tests.Lessons;

public sealed partial class TemperaturePairTests
{
    [Fact]
    public void Every_pair_of_temperatures_in_the_lesson_says_the_same_twice()
    {
        var pairs = Directory
            .EnumerateFiles(Repository.Lesson, "*.md", SearchOption.AllDirectories)
            .SelectMany(file => Pair().Matches(File.ReadAllText(file)))
            .ToList();

        Assert.NotEmpty(pairs);
        Assert.All(pairs, pair =>
        {
            var celsius = double.Parse(pair.Groups["c"].Value, CultureInfo.InvariantCulture);
            var fahrenheit = double.Parse(pair.Groups["f"].Value, CultureInfo.InvariantCulture);
            // Half a degree Celsius: as far as whole degrees of either scale can miss each other.
            Assert.Equal(celsius, Temperature.FromFahrenheit(fahrenheit).Celsius, 0.51);
        });
    }

    [GeneratedRegex(@"(?<c>[0-9]+) °C \((?<f>[0-9]+) °F\)")]
    private static partial Regex Pair();
}
