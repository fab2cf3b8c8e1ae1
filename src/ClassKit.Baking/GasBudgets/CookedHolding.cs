using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>
/// What a way of cooking makes of how a dough holds its gas, and of what it loses. An oven leaves both as they are known for its kind of
/// dough.
/// </summary>
internal static class CookedHolding
{
    /// <summary>Thinner than this in the time of a stage is seconds over a flame, which change no mass worth counting.</summary>
    private const double Seconds = 2;

    /// <summary>The holding for a course of stages; as it is where all heat is an oven's, or there is none.</summary>
    public static GasHolding Of(GasHolding holding, BakersFormula formula, IReadOnlyList<BakeStage> stages)
    {
        BakeStage[] hot = [.. stages.Where(stage => stage.InOven)];
        if (hot.All(stage => stage.Way == CookingWay.Oven))
            return holding;
        var main = hot.MaxBy(stage => stage.Minutes.Typical)!.Way;
        return WithLoss(WithSkin(Held(holding, formula, main), main), OfOven(holding), hot, main);
    }

    private static GasHolding Held(GasHolding holding, BakersFormula formula, CookingWay main) =>
        main switch
        {
            // Whether or not it can be predicted how far it rises: on the bench it is as full as any dough that is to be steamed.
            CookingWay.Steamer when formula.Leavening == Leavening.Yeast && !formula.HasStarter && !GasHolding.HasNoNet(formula) =>
                GasHolding.SteamedDough with
                {
                    IsPredicted = holding.IsPredicted,
                },
            _ when !holding.IsPredicted => holding,
            CookingWay.Oven or CookingWay.CombiOven or CookingWay.Steamer => holding,
            CookingWay.Fryer when formula.Leavening != Leavening.Steam => holding with
            {
                Source = $"as in an oven, for want of figures of fried doughs: {holding.Source}",
            },
            CookingWay.Griddle or CookingWay.Pan when holding.Kind == HoldingKind.Batter => holding with
            {
                Source = $"as in a tin, for want of figures of griddle cakes: {holding.Source}",
            },
            _ => holding with { IsPredicted = false },
        };

    /// <summary>What steam or water keeps wet gets no crust.</summary>
    private static GasHolding WithSkin(GasHolding holding, CookingWay main) =>
        main is CookingWay.Steamer or CookingWay.BoilingWater && holding.DriesAtItsSkin == true
            ? holding with
            {
                DriesAtItsSkin = false,
            }
            : holding;

    /// <summary>What a dough of the kind loses in an oven, whatever else it goes through.</summary>
    private static CookingLoss OfOven(GasHolding asBaked) => new(asBaked.BakingLoss, asBaked.BakingLoss, asBaked.LossSource);

    /// <summary>Of several ways the longest counts, and the others widen the band.</summary>
    private static GasHolding WithLoss(GasHolding holding, CookingLoss oven, BakeStage[] hot, CookingWay main)
    {
        var ways = hot.Where(stage => stage.Way == main || stage.Minutes.Typical > Seconds).Select(stage => stage.Way).Distinct().ToList();
        CookingLoss?[] losses = [.. ways.Select(way => way == CookingWay.Oven ? oven : CookingLoss.In(way))];
        if (losses.Any(loss => loss is null))
            return holding with { IsLossPredicted = false };
        var middle = main == CookingWay.Oven ? oven : CookingLoss.In(main)!;
        return holding with
        {
            BakingLoss = Widest(losses, loss => loss.Water, middle.Water),
            MassLoss = Widest(losses, loss => loss.Mass, middle.Mass),
            FatTaken = CookingLoss.FatTaken(main),
            LossSource = middle.Source,
        };
    }

    private static Band<double> Widest(CookingLoss?[] losses, Func<CookingLoss, Band<double>> of, Band<double> middle) =>
        new(losses.Min(loss => of(loss!).Low), middle.Typical, losses.Max(loss => of(loss!).High));
}
