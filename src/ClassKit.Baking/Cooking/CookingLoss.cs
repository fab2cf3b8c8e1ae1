using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Cooking;

/// <summary>What becomes of a piece's mass in a way of cooking, as shares of the dough or batter that went in.</summary>
/// <param name="Water">What leaves as steam; below 0 where steam or water is taken up instead.</param>
/// <param name="Mass">What the piece weighs less afterwards; below 0 where it weighs more. The same as <paramref name="Water"/> unless fat
/// comes in for it.</param>
/// <param name="Source">Where the band is from.</param>
public sealed record CookingLoss(Band<double> Water, Band<double> Mass, string Source)
{
    /// <summary>Steam condenses on the cold dough and later leaves its skin again.</summary>
    public static CookingLoss Steamed { get; } =
        Of(new(-0.02, 0.005, 0.03), "from memory: steam condenses on a bun and dries off it again, so that it weighs about what it did");

    /// <summary>Rounds and cakes of a finger's thickness at most.</summary>
    public static CookingLoss OnHotPlate { get; } =
        Of(new(0.06, 0.12, 0.20), "from memory, for thin breads: a dough of some 41 % water becomes a round of some 30 %");

    /// <summary>Seconds or minutes at 300 °C or more.</summary>
    public static CookingLoss InPizzaOven { get; } =
        Of(new(0.06, 0.12, 0.20), "from memory, for flat breads; it grows with every half minute");

    /// <summary>Between a dry oven and a steamer, by how much steam is let in.</summary>
    public static CookingLoss InCombiOven { get; } =
        Of(new(0.02, 0.08, 0.13), "from memory, between a steamer and a dry oven: it depends on the steam that is let in");

    /// <summary>A minute or two in water swells the skin.</summary>
    public static CookingLoss Boiled { get; } = Of(new(-0.05, -0.02, 0.01), "from memory: the skin takes up water while its starch swells");

    /// <summary>Fat takes the place of the water that leaves: the more of the one, the more of the other.</summary>
    /// <remarks>
    /// Wheat doughnuts took up 26 g of oil for 100 g, those with soya flour 8 g to 11 g (LWT, soya doughnuts with a coating, read at second
    /// hand); raised ring doughnuts hold about 25 % of oil and cake doughnuts about 20 %, the fat of their formula counted with it (from
    /// memory). How much water leaves, and the balance: from memory.
    /// </remarks>
    public static CookingLoss Fried { get; } =
        new(
            new(0.08, 0.13, 0.20),
            new(-0.08, 0.01, 0.06),
            "from memory: about as much fat comes in as water leaves; published uptakes of doughnuts run from 8 g to 26 g of fat for 100 g"
        );

    /// <summary>The fat that comes in, as a share of the dough; none unless it is fried.</summary>
    public static Band<double> FatTaken(CookingWay way) => way == CookingWay.Fryer ? new(0.06, 0.12, 0.26) : default;

    /// <summary>
    /// What is known of a way; null where nothing is: of an oven it depends on the dough, and of a microwave and of a flame alone no figure
    /// was found.
    /// </summary>
    public static CookingLoss? In(CookingWay way) =>
        way switch
        {
            CookingWay.Steamer => Steamed,
            CookingWay.Griddle or CookingWay.Pan => OnHotPlate,
            CookingWay.PizzaOven => InPizzaOven,
            CookingWay.CombiOven => InCombiOven,
            CookingWay.BoilingWater => Boiled,
            CookingWay.Fryer => Fried,
            _ => null,
        };

    private static CookingLoss Of(Band<double> lost, string source) => new(lost, lost, source);
}
