using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Content.Quantities;
using ClassKit.Lessons.Values;

namespace ClassKit.Content.Tests;

/// <summary>
/// The handbooks name every word of a step's brackets, every piece of equipment, every unit and every computed value that a reader knows.
/// </summary>
public sealed class HandbookWordsTests : IDisposable
{
    private static readonly string Lessons = File.ReadAllText(Path.Combine(Repository.Root, "lessons", "README.md"));

    private static readonly string Classes = File.ReadAllText(Path.Combine(Repository.Root, "demo-cohort", "README.md"));

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>Asked for a word that nobody knows, the reader lists those that it does.</summary>
    [Fact]
    public void Every_word_of_a_steps_brackets()
    {
        var unknown = LessonFormulaReader
            .Read(
                _folder.Write(
                    "bun.md",
                    "---\nleavening: yeast\n---\n\n# Bun\n\nText.\n\n## Method\n\n1. **Mix** (3 min, 2 qqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqq). Stir.\n"
                )
            )
            .Problems.First(problem => problem.Found.Contains("which is not known here", StringComparison.Ordinal))
            .Expected;
        var words = unknown[(unknown.IndexOf(':', StringComparison.Ordinal) + 1)..]
            .TrimEnd('.')
            .Split(',', StringSplitOptions.TrimEntries)
            .Except(EquipmentKind.All.Select(kind => kind.Many))
            .ToList();

        Assert.True(words.Count > 15, unknown);
        Assert.All(words, word => Named(Lessons, word.Split(" °C")[0].TrimEnd([.. "0123456789 "])));
    }

    [Fact]
    public void Every_piece_of_equipment() => Assert.All(EquipmentKind.All, kind =>
        {
            Named(Lessons, kind.One);
            Named(Classes, kind.Many);
        });

    [Fact]
    public void Every_unit() =>
        Assert.All(
            [
                .. Dimensions.Mass.Units.Keys,
                .. Dimensions.Temperature.Units.Keys,
                .. Dimensions.Minutes.Units.Keys,
                .. Dimensions.Metres.Units.Keys,
                .. Dimensions.Millimetres.Units.Keys,
                .. Dimensions.Percent.Units.Keys,
            ],
            unit => Assert.Contains($"`{unit}`", Lessons, StringComparison.Ordinal)
        );

    [Fact]
    public void Every_computed_value_of_the_class_and_of_a_bread()
    {
        var bread = LessonFormulaReader.Read(Path.Combine(Repository.Lesson, "formulas", "popovers.md")).Model!;
        var names = ValueNames
            .OfClass.Concat(ValueNames.Of(bread))
            .Append("liquid_temperature")
            .Except(bread.Formula.Lines.Select(line => line.Ingredient.Id))
            .ToList();

        Assert.True(names.Count > 20);
        Assert.All(names, name => Assert.Contains($"`{{{name}}}`", Lessons, StringComparison.Ordinal));
    }

    /// <summary>As a word of its own between back quotes, alone or with what stands before and behind it.</summary>
    private static void Named(string handbook, string word) =>
        Assert.True(
            word.Length == 0
                || handbook
                    .Split('`')
                    .Where((_, at) => at % 2 == 1)
                    .Any(quoted => $" {quoted} ".Contains($" {word} ", StringComparison.OrdinalIgnoreCase)),
            $"`{word}` is in no handbook"
        );
}
