using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Ingredients;

/// <summary>What an ingredient is made of besides water, in grams per 100 g.</summary>
/// <param name="Protein">Protein.</param>
/// <param name="Fat">Fat.</param>
/// <param name="Carbohydrate">Sugars, starch and fibre: carbohydrate by difference.</param>
/// <param name="Ash">Minerals, salts among them.</param>
public readonly record struct FoodSolids(double Protein, double Fat, double Carbohydrate, double Ash)
{
    /// <summary>Of an ingredient of which nothing else is known: all carbohydrate, which most of a pantry is.</summary>
    /// <param name="waterShare">Its water by mass, 0 to 1.</param>
    public static FoodSolids Unknown(double waterShare) => new(0, 0, PerHundred.Of(1 - waterShare), 0);
}
