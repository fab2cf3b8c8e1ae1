using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Variants;

namespace ClassKit.Workbooks.Dealing;

/// <summary>The student whose workbook is the template: everything that is a student's own is a mark that occurs nowhere else.</summary>
internal static class StandIn
{
    /// <summary>Characters of the private use area, which no keyboard has.</summary>
    public const string Name = "\uE0A1\uE0A2";

    /// <inheritdoc cref="Name"/>
    public const string Id = "\uE0A3\uE0A4";

    /// <summary>
    /// What the stand-in sees in every drawing: which one a student gets follows from the key, and the stand-in has none.
    /// </summary>
    public const string Seen = "\uE0A5\uE0A6";

    /// <summary>A number that no exercise deals: nine digits, where a bench has four.</summary>
    private const decimal FirstValue = 987_650_001;

    public static DealtStudent For(PracticeLayout layout)
    {
        var next = FirstValue;
        return new(
            new(Id, Name),
            "",
            [
                .. layout.Exercises.Select(exercise => new Variant(
                    exercise.Exercise,
                    exercise.Givens.ToDictionary(place => place.Given.Id, _ => next++),
                    new Dictionary<string, double>()
                )),
            ]
        );
    }
}
