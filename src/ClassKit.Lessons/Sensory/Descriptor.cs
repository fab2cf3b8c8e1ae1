using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Sensory;

/// <summary>One thing to judge about a sample on a scale from <see cref="Least"/> to <see cref="Most"/>.</summary>
/// <param name="Name">What is judged.</param>
/// <param name="Low">What the low end of the scale is called.</param>
/// <param name="High">What its high end is called.</param>
/// <param name="How">How to go about it, a few words.</param>
/// <remarks>
/// A category scale with named ends, as ISO 4121:2003, "Guidelines for the use of quantitative response scales", has them. The words are
/// common practice, chosen to tell leavenings apart.
/// </remarks>
public sealed record Descriptor(string Name, string Low, string High, string How)
{
    /// <summary>The low end of the scale.</summary>
    public const int Least = 0;

    /// <summary>The high end of the scale.</summary>
    public const int Most = 9;

    /// <summary>
    /// What is judged of the samples, looks first and aftertaste last: nobody is asked for the taste of yeast where no bread has any, nor
    /// of egg, of soda or of a sour starter.
    /// </summary>
    /// <param name="breads">What is tasted.</param>
    public static IReadOnlyList<Descriptor> For(IReadOnlyList<LessonFormula> breads)
    {
        ArgumentNullException.ThrowIfNull(breads);
        return
        [
            .. All.Where(descriptor =>
                descriptor.Of is not { } brings || breads.Any(bread => bread.Formula.Lines.Any(line => brings(line.Ingredient)))
            ),
        ];
    }

    /// <summary>What has to be in a bread for this to be asked; null where it is asked of any.</summary>
    public Func<Ingredient, bool>? Of { get; init; }

    private static IReadOnlyList<Descriptor> All { get; } =
    [
        new("Openness of the crumb", "fine, even", "large holes", "look at the cut"),
        new("Crispness of the crust", "soft", "crisp", "bite once with the front teeth"),
        new("Tenderness of the crumb", "tough", "tender", "chew five times"),
        new("Moistness", "dry", "moist", "after five chews"),
        new("Smell and taste of yeast", "none", "strong", "smell first, then taste")
        {
            Of = ingredient => ingredient.Role == IngredientRole.Yeast,
        },
        new("Smell and taste of egg", "none", "strong", "smell first, then taste")
        {
            Of = ingredient => ingredient.Role == IngredientRole.Egg,
        },
        new("Sourness", "none", "strong", "after five chews") { Of = ingredient => ingredient.StarterOf is not null },
        new("Soapy or bitter aftertaste", "none", "strong", "wait ten seconds after swallowing")
        {
            Of = ingredient => ingredient.Role == IngredientRole.ChemicalLeavening,
        },
    ];
}
