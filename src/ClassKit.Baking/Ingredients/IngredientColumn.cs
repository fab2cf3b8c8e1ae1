namespace ClassKit.Baking.Ingredients;

/// <summary>A column of a file of ingredients.</summary>
/// <param name="Name">Its title.</param>
/// <param name="Means">What stands in it, for whoever fills it in.</param>
public sealed record IngredientColumn(string Name, string Means)
{
    /// <summary>All of them, in the order of the file that ships.</summary>
    public static IReadOnlyList<IngredientColumn> All { get; } =
    [
        new("id", "how formulas and card values name it: small letters, digits and _; left empty it is made of the name"),
        new("name", "how pages name it; must be there"),
        new("other names", "what methods and lists call it besides, separated by ;"),
        new(
            "kind",
            "flour, liquid, egg, fat, sugar, salt, yeast, leavening or other: what it does in a dough; all flour together is 100 %; must be there"
        ),
        new("water", "g in 100 g; must be there"),
        new("protein", "g in 100 g, as the label has it"),
        new("fat", "g in 100 g"),
        new("carbohydrate", "g in 100 g, fibre too; left empty it is what is missing to 100"),
        new("ash", "minerals and salts, g in 100 g"),
        new("sugar", "g in 100 g, part of the carbohydrate"),
        new("salt", "g in 100 g, as European labels have it: 2.5 times the sodium"),
        new("sodium", "g in 100 g, as American labels have it (there in mg); one of salt and sodium is enough"),
        new("acid", "g of acid in 100 g, counted as lactic acid, as one number or lowest-usual-highest"),
        new(
            "gives",
            "what makes gas in it without yeast: soda, potassium bicarbonate, ammonia or powder (soda with its own acid, also in a flour)"
        ),
        new("gas", "of a powder, g of carbon dioxide from 100 g, as one number or lowest-usual-highest; left empty it is what is usual"),
        new("gas at once", "how much of that comes before the oven, in %, likewise"),
        new("neutralises", "of an acid for soda, g of soda that 100 g of it take up: its neutralising value"),
        new("density", "g in 1 mL, where no weight of a cup is known"),
        new("cup", "what a US cup (236.588 mL) of it weighs in g"),
        new("cup filled", "how that cup is filled or what is in it, where that matters: dipped, spooned, sifted, packed, chopped"),
        new("teaspoon", "what a US teaspoon (4.929 mL) of it weighs in g"),
        new("piece", "what one of it is called where it is counted: large egg"),
        new("pieces", "what several are called: large eggs"),
        new("piece weight", "what one weighs in g, without shell or wrapper"),
        new("allergens", "what must be declared of it, separated by ;"),
        new("label", "what only the label can tell: one of the words for it, or words of your own, separated by ;"),
        new(
            "cold",
            "yes or no: whether it is kept in the refrigerator until it is used; left empty it is yes of eggs, of fresh yeast, and of what is moist and holds milk or egg or may hold them"
        ),
        new("price name", "what price lists call it, where that is another name"),
        new("source", "where the figures come from: the label, a table with its number; must be there"),
    ];
}
