using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.HeatBalances;

/// <summary>What an ingredient is made of besides water, in grams per 100 g.</summary>
/// <param name="Protein">Protein.</param>
/// <param name="Fat">Fat.</param>
/// <param name="Carbohydrate">Sugars, starch and fibre: carbohydrate by difference.</param>
/// <param name="Ash">Minerals, salts among them.</param>
internal readonly record struct FoodSolids(double Protein, double Fat, double Carbohydrate, double Ash)
{
    /// <summary>USDA SR28 by NDB number; instant yeast as active dry. Of soda the table has the residue after burning: here all that is not water is salt.</summary>
    private static readonly Dictionary<string, FoodSolids> ById = new(StringComparer.Ordinal)
    {
        ["ap_flour"] = new(10.33, 0.98, 76.31, 0.47), // 20081
        ["bread_flour"] = new(11.98, 1.66, 72.53, 0.47), // 20083
        ["whole_wheat_flour"] = new(13.21, 2.50, 71.97, 1.58), // 20080
        ["cake_flour"] = new(8.20, 0.86, 78.03, 0.39), // 20084
        ["self_rising_flour"] = new(9.89, 0.97, 74.22, 4.33), // 20082
        ["water"] = default,
        ["whole_milk"] = new(3.15, 3.25, 4.80, 0.67), // 01077
        ["milk_2_percent"] = new(3.30, 1.98, 4.80, 0.71), // 01079
        ["milk_1_percent"] = new(3.37, 0.97, 4.99, 0.75), // 01082
        ["skim_milk"] = new(3.37, 0.08, 4.96, 0.75), // 01085
        ["buttermilk"] = new(3.31, 0.88, 4.79, 0.89), // 01088
        ["plain_yogurt"] = new(3.47, 3.25, 4.66, 0.72), // 01116
        ["low_fat_yogurt"] = new(5.25, 1.55, 7.04, 1.09), // 01117
        ["skim_yogurt"] = new(5.73, 0.18, 7.68, 1.18), // 01118
        ["greek_yogurt"] = new(10.19, 0.39, 3.60, 0.72), // 01256
        ["whole_egg"] = new(12.56, 9.51, 0.72, 1.06), // 01123
        ["egg_white"] = new(10.90, 0.17, 0.73, 0.63), // 01124
        ["egg_yolk"] = new(15.86, 26.54, 3.59, 1.71), // 01125
        ["unsalted_butter"] = new(0.85, 81.11, 0.06, 0.09), // 01145
        ["salted_butter"] = new(0.85, 81.11, 0.06, 2.11), // 01001
        ["vegetable_oil"] = new(0, 100, 0, 0), // 04582
        ["olive_oil"] = new(0, 100, 0, 0), // 04053
        ["sugar"] = new(0, 0, 99.98, 0.01), // 19335
        ["brown_sugar"] = new(0.12, 0, 98.09, 0.45), // 19334
        ["honey"] = new(0.30, 0, 82.40, 0.20), // 19296
        ["salt"] = new(0, 0, 0, 99.80), // 02047
        ["baking_soda"] = new(0, 0, 0, 99.80), // 18372
        ["baking_powder"] = new(0, 0, 27.70, 67.30), // 18369
        ["cream_of_tartar"] = new(0, 0, 61.50, 36.80), // 18373
        ["instant_yeast"] = new(40.44, 7.61, 41.22, 5.65),
        ["active_dry_yeast"] = new(40.44, 7.61, 41.22, 5.65), // 18375
        ["fresh_yeast"] = new(8.40, 1.90, 18.10, 1.80), // 18374
        ["semolina"] = new(12.68, 1.05, 72.83, 0.77), // 20066
        ["rye_flour"] = new(10.88, 1.52, 75.43, 1.20), // 20064
        ["rice_flour"] = new(5.95, 1.42, 80.13, 0.61), // 20061
        ["cornmeal"] = new(7.11, 1.75, 79.45, 0.51), // 20022
        ["oats"] = new(16.89, 6.90, 66.27, 1.72), // 20038
        ["shortening"] = new(0, 100, 0, 0), // 04031
        ["lard"] = new(0, 100, 0, 0), // 04002
        ["powdered_sugar"] = new(0, 0, 99.77, 0.01), // 19336
        ["sesame_seeds"] = new(17.73, 49.67, 23.45, 4.45), // 12023
        ["almonds"] = new(21.15, 49.93, 21.55, 2.97), // 12061
        ["walnuts"] = new(15.23, 65.21, 13.71, 1.78), // 12155
    };

    /// <summary>Of an ingredient; one that is not in the table counts as carbohydrate, which most of a pantry is.</summary>
    public static FoodSolids Of(Ingredient ingredient) => ById.TryGetValue(ingredient.Id, out var solids) ? solids : new(0, 0, (1 - ingredient.WaterShare) * 100, 0);
}
