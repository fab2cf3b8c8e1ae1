using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Observations;
using ClassKit.Lessons.Packs;

namespace ClassKit.Pages.Drawings;

/// <summary>A bread as its formula lets us expect it, cut open.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Outline">Its edge, by typical values.</param>
/// <param name="GasShare">The share of its volume that is gas, 0 to 1.</param>
/// <param name="IsHollow">True if the gas is one hollow behind a shell; otherwise it is in pores.</param>
/// <param name="Height">In millimetres, with its range.</param>
/// <param name="Width">At its widest, in millimetres, with its range.</param>
internal sealed record CutBread(string Title, BreadOutline Outline, double GasShare, bool IsHollow, Prediction Height, Prediction Width)
{
    /// <summary>The breads whose shape is written down, in order.</summary>
    public static IReadOnlyList<CutBread> Of(IReadOnlyList<LeaveningComparison> compared, Temperature boilingPoint) =>
        [
            .. compared
                .Where(bread => bread.Bread.Shape is not null && !Prediction.IsBeyondUs(Measure.Height, bread))
                .Select(bread => Of(bread, boilingPoint)),
        ];

    private static CutBread Of(LeaveningComparison compared, Temperature boilingPoint)
    {
        var (piece, gas) = (compared.PerPiece, compared.PerPiece.Held.Baked.Typical.Millilitres);
        var volume = piece.GasFreeVolume.Millilitres + gas;
        return new(
            compared.Bread.Formula.Title,
            BreadOutline.Of(compared.Bread.Shape!, volume),
            gas / volume,
            piece.Held.Holding.IsHollow,
            Prediction.Of(Measure.Height, compared, boilingPoint)!,
            Prediction.Of(Measure.Diameter, compared, boilingPoint)!
        );
    }
}
