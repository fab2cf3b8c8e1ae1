using System.Globalization;
using ClassKit.Grading.Answers;

namespace ClassKit.Grading.Tests.Answers;

/// <summary>Whatever a language's published format makes of a number is read as that number, and nothing else is read as one.</summary>
public sealed class PublishedFormatTests
{
    private const int Draws = 400;

    public static TheoryData<string> Locales => [.. PublishedFormat.All.Select(format => format.Locale)];

    private static PublishedFormat Format(string locale) => PublishedFormat.All.Single(format => format.Locale == locale);

    private static decimal Draw(Random random) =>
        Math.Round((decimal)(Math.Pow(10, random.NextDouble() * 9 - 2) * (random.Next(4) == 0 ? -1 : 1)), random.Next(4));

    [Theory]
    [MemberData(nameof(Locales))]
    public void A_number_in_the_format_of_a_language_is_read_as_that_number(string locale)
    {
        var (format, random) = (Format(locale), new Random(11));
        for (var draw = 0; draw < Draws; draw++)
        {
            var number = Draw(random);
            foreach (
                var text in (string[])
                    [format.Of(number), $"≈{format.Of(number)}", $"{format.Of(number)}\u00A0g", $"x = {format.Of(number)} g."]
            )
            {
                var read = AnswerText.Read(text, "g");
                Assert.True(
                    read.Contains((double)number),
                    $"{locale}: {number} was written “{text}” and read as {string.Join(" or ", read)}"
                );
                Assert.InRange(read.Count, 1, 2);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Locales))]
    public void Percents_and_powers_of_ten_are_read_too(string locale)
    {
        var (format, random) = (Format(locale), new Random(12));
        for (var draw = 0; draw < Draws; draw++)
        {
            var mantissa = Math.Round((decimal)random.NextDouble() * 8.9m + 1, random.Next(3));
            var exponent = random.Next(-4, 5);
            var text = format.Scientific(mantissa, exponent);
            Assert.Contains(AnswerText.Read(text, "g"), read => Near((double)mantissa * Math.Pow(10, exponent), read));

            var share = Draw(random);
            Assert.Contains(AnswerText.Read(format.Of(share) + (format.Zero is "٠" or "۰" ? "٪" : "\u00A0%"), "%"), read =>
                Near((double)share / 100, read)
            );
        }
    }

    private static bool Near(double expected, double read) => Math.Abs(read - expected) <= Math.Abs(expected) * 1e-12;

    [Fact]
    public void What_is_not_one_number_is_not_read_as_one()
    {
        var random = new Random(13);
        for (var draw = 0; draw < Draws; draw++)
        {
            var (low, step) = (random.Next(20, 900), random.Next(1, 90));
            var (one, two) = ($"{low}", $"{low + step}");
            var moment = new DateTime(2024, 1, 1).AddMinutes(random.Next(500_000));
            string[] texts =
            [
                // Ranges and tolerances.
                $"{one}-{two}",
                $"{one}–{two} g",
                $"{one} - {two}",
                $"{one} to {two}",
                $"between {one} and {two}",
                $"{one}…{two}",
                $"{one} ± {step}",
                $"{one}+/-{step}",
                $"{one} bis {two}",
                // Two numbers.
                $"{one} and {two}",
                $"{one}, {two}",
                $"{one}; {two}",
                $"{one} or {two}",
                $"{one} g {step} oz",
                $"{one} (or {two})",
                $"{one} = {two}",
                $"{step} h {step} min",
                // Dates and times.
                .. (
                    (string[])
                        [
                            "yyyy-MM-dd",
                            "dd.MM.yyyy",
                            "M/d/yyyy",
                            "dd/MM/yy",
                            "HH:mm",
                            "HH:mm:ss",
                            "h:mm tt",
                            "d MMM yyyy",
                            "yyyy-MM-ddTHH:mm",
                        ]
                ).Select(shape => moment.ToString(shape, CultureInfo.InvariantCulture)),
                // Telephone numbers, addresses, codes.
                $"555-01{step:00}",
                $"+1 555 {low:000} {low + 1000}",
                $"(555) {low:000}-0142",
                $"192.168.{step}.{step}",
                $"v{step}.{step}.{step}",
                $"A{one}",
                $"row {one}",
                $"no {one}",
                $"#{one}",
                // Sums left undone, comparisons, words that change the number.
                $"{one}+{two}",
                $"{one} × {step}",
                $"{one} x {step}",
                $"{one} * {step} =",
                $"<{one}",
                $"> {one}",
                $"≤ {one} g",
                $"{one} dozen",
                $"{one} million",
                $"{one}x",
                $"{one}-",
                $"{one}²",
                $"{one}:{step}",
                $"{one}..{two}",
                $"{one},{step},",
                $"{one}.{step}.{step}",
                $"{step}/0",
                $"not {one}",
            ];
            foreach (var text in texts)
                Assert.True(
                    AnswerText.Read(text, "g").Count == 0,
                    $"“{text}” was read as {string.Join(" or ", AnswerText.Read(text, "g"))}"
                );
        }
    }
}
