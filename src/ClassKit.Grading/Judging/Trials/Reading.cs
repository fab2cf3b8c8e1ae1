using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Answers;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>One way to take what a cell holds for a number.</summary>
/// <param name="Way">Which of the numbers that a text can mean; 0 for a number.</param>
/// <param name="IsScaled">True if 65 in a percent cell is taken for 65 %: other cells, which see 65, take it for 6500 %.</param>
/// <param name="Dealt">What it is on the dealt inputs.</param>
internal sealed record Reading(int Way, bool IsScaled, double Dealt)
{
    /// <summary>A number that a cell holds, taken for what it is.</summary>
    public static Reading Plain(double number) => new(0, false, number);

    /// <summary>True if the cell is taken for what it holds.</summary>
    public bool IsPlain => Way == 0 && !IsScaled;

    /// <summary>Every way to read a cell's value, the plain one first; none if it is no number.</summary>
    public static IReadOnlyList<Reading> Of(Part part, CellValue value)
    {
        var plain = Numbers(part, value).Select((number, way) => new Reading(way, false, number)).ToList();
        return part.Unit.IsPercent
            ? [.. plain, .. plain.Select(reading => reading with { IsScaled = true, Dealt = part.Unit.Held(reading.Dealt) })]
            : plain;
    }

    /// <summary>What another value of the same cell is, read in this way; null if it is no number.</summary>
    public double? Of(CellValue value, Part part)
    {
        if (IsPlain && value.IsNumber)
            return value.Number;
        return Numbers(part, value) is { } numbers && Way < numbers.Count ? (IsScaled ? part.Unit.Held(numbers[Way]) : numbers[Way]) : null;
    }

    /// <summary>What a cell holds that is read in this way and means <paramref name="number"/>.</summary>
    public double Written(double number) => IsScaled ? Unit.Percent.Shown(number) : number;

    private static IReadOnlyList<double> Numbers(Part part, CellValue value) =>
        value.Kind switch
        {
            CellValueKind.Number => [value.Number],
            CellValueKind.Text => AnswerText.Read(value.Text, part.Unit),
            CellValueKind.Blank or CellValueKind.Logical or CellValueKind.Error => [],
        };
}
