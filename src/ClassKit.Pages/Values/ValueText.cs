using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Observations;
using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Values;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Values;

/// <summary>Every value of <see cref="ValueNames"/> as text.</summary>
internal static class ValueText
{
    public static Dictionary<string, string> Of(ComputedPack pack)
    {
        var units = pack.Class.Units;
        var values = new Dictionary<string, string>
        {
            ["students"] = NumberText.AtMost(pack.Class.Students, 0),
            ["teams"] = NumberText.AtMost(pack.Class.Teams, 0),
            ["period"] = NumberText.WithUnit(NumberText.AtMost(pack.Class.PeriodMinutes, 0), "min"),
            ["kitchen_temperature"] = KitchenText.Temperature(pack.Class.KitchenTemperature, units),
            ["altitude"] = KitchenText.Height(pack.Class.AltitudeMetres, pack.Class.Units),
            ["air_pressure"] = NumberText.WithUnit(NumberText.AtMost(pack.Pressure.Hectopascals, 0), "hPa"),
            ["boiling_point"] = KitchenText.Temperature(pack.BoilingPoint, units),
        };
        foreach (var (card, compared) in pack.Cards.Zip(pack.Comparison))
        {
            foreach (var (name, text) in Of(card, compared, pack))
                values[$"{card.Bread.Formula.Id}.{name}"] = text;
        }
        return values;
    }

    private static IEnumerable<(string Name, string Text)> Of(FormulaCard card, LeaveningComparison compared, ComputedPack pack)
    {
        var (formula, units) = (card.Bread, pack.Class.Units);
        var loss = Prediction.BakeLoss(compared);
        yield return ("pieces", NumberText.AtMost(card.Pieces, 0));
        yield return ("piece_mass", KitchenText.Ordered(formula.PieceMass, pack.Class));
        yield return ("dough", KitchenText.Ordered(card.Batch.Weighed, pack.Class));
        yield return (
            "flour",
            KitchenText.Ordered(Sum(card.Lines.Where(line => line.Line.Ingredient.Role == IngredientRole.Flour)), pack.Class)
        );
        yield return ("mix_temperature", MixText.Aim(card.Mix, units));
        yield return ("heat", CookingText.Heats(formula, units));
        yield return ("oven", KitchenText.Oven(formula.BakeFrom, units));
        yield return ("oven_end", KitchenText.Oven(formula.BakeTo, units));
        yield return ("time", KitchenText.Minutes(card.Minutes.Min, card.Minutes.Max));
        yield return ("hydration", Percent(card.EffectiveHydrationPercent));
        yield return ("added_liquid", Percent(card.AddedLiquidPercent));
        yield return ("gas_made", compared.IsGasPredicted ? KitchenText.Gas(compared.PerPiece.Made.Typical) : CookingText.NoNumber);
        yield return ("gas_held", compared.IsRisePredicted ? KitchenText.Gas(compared.PerPiece.Held.Baked.Typical) : CookingText.NoNumber);
        yield return ("steam_made", KitchenText.Gas(compared.PerPiece.SteamFate.Made.Typical));
        yield return (
            "steam_held",
            compared.IsRisePredicted ? KitchenText.Gas(compared.PerPiece.SteamFate.Held.Typical) : CookingText.NoNumber
        );
        yield return (
            "bake_loss",
            Prediction.IsBeyondUs(Measure.BakeLoss, compared) ? CookingText.NoNumber
            : loss.Low < 0 ? MeasureText.Range(Measure.BakeLoss, loss.Map(PerHundred.Of), units)
            : $"{NumberText.AtMost(PerHundred.Of(loss.Low), 0)}–{Percent(PerHundred.Of(loss.High))}"
        );
        foreach (
            var (name, measure) in new[]
            {
                ("mass_after", Measure.MassAfter),
                ("inside", Measure.InternalTemperature),
                ("height", Measure.Height),
                ("diameter", Measure.Diameter),
            }
        )
        {
            if (Prediction.Of(measure, compared, pack.BoilingPoint) is { } prediction)
                yield return (name, MeasureText.Of(prediction, units));
            else if (Prediction.IsBeyondUs(measure, compared))
                yield return (name, CookingText.NoNumber);
        }
        if (card.Mix.Warmed is [var warmed, ..])
            yield return ("liquid_temperature", KitchenText.Temperature(warmed.Temperature, units));
        foreach (var left in formula.Place?.Changes.OfType<SeriesChange.LeftOut>() ?? [])
            yield return (left.Ingredient.Id, KitchenText.Weighed(default, card.Batch.Scales.Large, units));
        foreach (var lines in card.Lines.GroupBy(line => line.Line.Ingredient.Id))
            yield return (lines.Key, KitchenText.Weighed(Sum(lines), lines.First().Line.Resolution, units));
    }

    private static Mass Sum(IEnumerable<CardLine> lines) => Mass.FromGrams((double)lines.Sum(line => (decimal)line.Line.Weighed.Grams));

    private static string Percent(double percent) => NumberText.WithUnit(NumberText.AtMost(percent, 0), "%");
}
