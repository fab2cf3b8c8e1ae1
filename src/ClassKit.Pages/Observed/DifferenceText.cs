using ClassKit.Lessons.Measured;

namespace ClassKit.Pages.Observed;

/// <summary>How much higher one bread stood than another, in a sentence with its uncertainty.</summary>
internal static class DifferenceText
{
    public static string Of(MeasuredBread first, MeasuredBread second, PairedDifference difference)
    {
        var unit = first.Height!.Unit;
        var (higher, lower, turned) = difference.Mean >= 0 ? (first, second, difference) : (second, first, Turned(difference));
        var (high, low) = (higher.Compared.Bread.Formula.Title, lower.Compared.Bread.Formula.Title);
        var mean = Number(turned.Mean);
        if (turned.Interval is not { } ends)
            return $"{high} stood {NumberText.WithUnit(mean, unit.Symbol)} higher than {low}, in one team: that is too few to say more.";
        var range =
            $"95 %: {Number(ends.Low)} to {NumberText.WithUnit(Number(ends.High), unit.Symbol)}, {Phrases.Count(turned.Pairs, "team")}";
        return turned.MayBeNone
            ? $"{high} stood {NumberText.WithUnit(mean, unit.Symbol)} higher than {low} ({range}): these teams could as well have found no difference."
            : $"{high} stood {NumberText.WithUnit(mean, unit.Symbol)} higher than {low} ({range}).";

        string Number(double value) => NumberText.Fixed(value, unit.Decimals).Replace('-', '−');
    }

    private static PairedDifference Turned(PairedDifference difference) =>
        new(difference.Pairs, -difference.Mean, difference.Interval is { } ends ? (-ends.High, -ends.Low) : null);
}
