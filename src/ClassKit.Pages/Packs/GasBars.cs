using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Charts;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Packs;

/// <summary>The gas of each bread as a row of a chart, in millilitres: what is made, and within it what is held.</summary>
internal static class GasBars
{
    /// <summary>Each control before the bread that it is held against, and then the breads.</summary>
    public static IReadOnlyList<BandBar> Of(ComputedPack pack, IReadOnlyList<LeaveningComparison> compared) =>
        [
            .. compared.SelectMany(each =>
                pack.Controls.Where(control => control.Of.Formula.Id == each.Bread.Formula.Id)
                    .Select(control => Bar(ControlText.Named(control), isMadeShown: false))
                    .Append(Bar(each, each.IsGasPredicted && each.Bread.Formula.Leavening != Leavening.Steam))
            ),
        ];

    /// <summary>Where to end the axis: above 0.</summary>
    public static double Largest(IReadOnlyList<BandBar> bars) =>
        bars.SelectMany(bar => (double?[])[bar.Made?.High, bar.Held?.High]).Max() is { } largest and > 0 ? largest : 1;

    private static BandBar Bar(LeaveningComparison compared, bool isMadeShown)
    {
        var made = isMadeShown ? compared.PerPiece.Made : (Band<Volume>?)null;
        var held = compared.IsRisePredicted ? compared.PerPiece.Held.Baked : (Band<Volume>?)null;
        return new(
            compared.Bread.Formula.Title,
            made?.Map(volume => volume.Millilitres),
            held?.Map(volume => volume.Millilitres),
            held is { } known ? KitchenText.GasInMillilitres(known.Typical) : "measure it",
            made is { } all ? $"of {KitchenText.GasInMillilitres(all.Typical)}" : "",
            string.Join(
                "; ",
                (
                    (string?[])
                        [
                            held is { } kept ? $"held {KitchenText.Gas(kept)}" : $"held {CookingText.NotPredicted}",
                            made is { } whole ? $"made {KitchenText.Gas(whole)}" : null,
                        ]
                ).OfType<string>()
            )
        );
    }
}
