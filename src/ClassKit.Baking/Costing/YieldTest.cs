namespace ClassKit.Baking;

/// <summary>What is left of something bought after trimming, draining or cooking.</summary>
/// <param name="AsPurchased">As bought.</param>
/// <param name="EdiblePortion">As used.</param>
/// <remarks>BC Cook Articulation Committee, Basic Kitchen and Food Service Management (2015, CC BY 4.0), "Yield Testing".</remarks>
public sealed record YieldTest(Mass AsPurchased, Mass EdiblePortion)
{
    /// <summary>The share that can be used, 0 to 1, not rounded.</summary>
    public double Share => EdiblePortion / AsPurchased;

    /// <summary>A test of two weighings.</summary>
    /// <param name="asPurchased">Above 0.</param>
    /// <param name="ediblePortion">Above 0. May be more than was bought, for what takes up water in cooking.</param>
    public static Computed<YieldTest> Of(Mass asPurchased, Mass ediblePortion)
    {
        if (asPurchased.Grams <= 0)
            return new Impossibility("nothing-bought", $"{Figures.Grams(asPurchased)} as purchased were given.", "Weigh what was bought, above 0 g.");
        return ediblePortion.Grams > 0
            ? new YieldTest(asPurchased, ediblePortion)
            : new Impossibility("nothing-left", $"{Figures.Grams(ediblePortion)} of edible portion were given.", "Weigh what is left, above 0 g.");
    }

    /// <summary>A test of a weighing and what was trimmed off.</summary>
    public static Computed<YieldTest> FromTrim(Mass asPurchased, Mass trim) => trim.Grams < 0
        ? new Impossibility("negative-trim", $"A trim of {Figures.Grams(trim)} was given.", "Weigh what was cut away, 0 g or more.")
        : Of(asPurchased, asPurchased - trim);

    /// <summary>What to buy so that a mass can be used: edible portion / share.</summary>
    public Mass ToBuy(Mass ediblePortion) => ediblePortion / Share;

    /// <summary>The steps of the test.</summary>
    public Explanation Explain() => new(
        "Yield",
        [new("yield", "edible portion / as purchased", $"{Figures.Grams(EdiblePortion)} / {Figures.Grams(AsPurchased)}", $"{Figures.Show(Share * 100)} %")],
        "");

    /// <summary>The price of a unit as used: price as purchased / share. From the weights themselves; a share rounded first gives a cent more or less.</summary>
    public Money EdiblePortionPrice(Money asPurchasedPrice) => asPurchasedPrice / (decimal)Share;
}
