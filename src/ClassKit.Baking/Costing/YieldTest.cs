using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Costing;

/// <summary>What is left of something bought after trimming, draining or cooking.</summary>
/// <param name="AsPurchased">As bought.</param>
/// <param name="EdiblePortion">As used.</param>
/// <remarks>BC Cook Articulation Committee, Basic Kitchen and Food Service Management (2015, CC BY 4.0), "Yield Testing".</remarks>
public sealed record YieldTest(Mass AsPurchased, Mass EdiblePortion) : IExplained
{
    /// <summary>Rice takes up three times its mass of water; more than this is a slip of the unit. No source.</summary>
    private const double MostShare = 20;

    private const double LeastShare = 0.001;

    /// <summary>The share that can be used, 0 to 1, not rounded; above 1 for what takes up water.</summary>
    public double Share => EdiblePortion / AsPurchased;

    /// <summary>The factor by which edible portions are multiplied to get what to buy.</summary>
    public double Factor => AsPurchased / EdiblePortion;

    /// <summary>The steps of the test.</summary>
    public Explanation Explanation =>
        Explanations.Explanation.Of(
            "Yield",
            "yield",
            "edible portion / as purchased",
            $"{Figures.Grams(EdiblePortion)} / {Figures.Grams(AsPurchased)}",
            Figures.Percent(Share)
        );

    /// <summary>A test of two weighings.</summary>
    /// <param name="asPurchased">Above 0.</param>
    /// <param name="ediblePortion">Above 0. May be more than was bought, for what takes up water in cooking.</param>
    public static Computed<YieldTest> Of(Mass asPurchased, Mass ediblePortion)
    {
        if (Sanity.Mass(asPurchased, "what was bought", "nothing-bought") is { } nothing)
            return nothing;
        if (Sanity.Mass(ediblePortion, "edible portion", "nothing-left") is { } noneLeft)
            return noneLeft;
        YieldTest test = new(asPurchased, ediblePortion);
        return Sanity.Number(test.Share, LeastShare, MostShare, "Yield, as a share", "odd-yield") is { } odd ? odd : test;
    }

    /// <summary>A test of a weighing and what was trimmed off.</summary>
    /// <param name="asPurchased">Above 0.</param>
    /// <param name="trim">What was cut away or drained; not negative, less than what was bought.</param>
    public static Computed<YieldTest> FromTrim(Mass asPurchased, Mass trim) =>
        Sanity.Mass(trim, "trim", "negative-trim", orNone: true) is { } odd ? odd : Of(asPurchased, asPurchased - trim);

    /// <summary>What to buy so that a mass of 0 g or more can be used: edible portion / share.</summary>
    public Computed<Mass> ToBuy(Mass ediblePortion)
    {
        if (Sanity.Mass(ediblePortion, "edible portion", "negative-need", orNone: true) is { } odd)
            return odd;
        var buy = Mass.FromGrams(ediblePortion.Grams / Share);
        return Explanations
            .Explanation.Of(
                "As purchased",
                "to buy",
                "edible portion × as purchased / edible portion of the test",
                $"{Figures.Grams(ediblePortion)} × {Figures.Grams(AsPurchased)} / {Figures.Grams(EdiblePortion)}",
                Figures.Grams(buy)
            )
            .For(buy);
    }

    /// <summary>
    /// The price of a unit as used: price as purchased / share. From the weights themselves; a share rounded first gives a cent more or
    /// less.
    /// </summary>
    public Computed<Money> EdiblePortionPrice(Money asPurchasedPrice)
    {
        if (Sanity.Money(asPurchasedPrice, "Price as purchased") is { } odd)
            return odd;
        var price = asPurchasedPrice / (decimal)Share;
        return Explanations
            .Explanation.Of(
                "Edible-portion price",
                "price as used",
                "price as purchased × as purchased / edible portion",
                $"{Figures.Amount(asPurchasedPrice)} × {Figures.Grams(AsPurchased)} / {Figures.Grams(EdiblePortion)}",
                Figures.Amount(price)
            )
            .For(price);
    }
}
