using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Allergies;

/// <summary>A need of the class, held against every bread. For the instructor alone.</summary>
/// <param name="Need">In the words of the class profile.</param>
/// <param name="Breads">Every bread, in the lesson's order, also where nothing is declared.</param>
public sealed record AllergyConcern(AllergenWord Need, IReadOnlyList<BreadConcern> Breads)
{
    internal static IReadOnlyList<AllergyConcern> Of(IReadOnlyList<FormulaCard> cards, ClassProfile profile)
    {
        var needs = profile.Allergies.DistinctBy(need => need.Word).ToList();
        return
        [
            .. needs.Select(need => new AllergyConcern(
                need,
                [.. cards.Select(card => Bread(card, need, needs, profile.Pantry) with { Shares = Sharing(card, need, cards) })]
            )),
        ];
    }

    private static BreadConcern Bread(FormulaCard card, AllergenWord need, IReadOnlyList<AllergenWord> needs, Pantry pantry) =>
        new(
            card,
            [
                .. card
                    .Bread.Ingredients.Where(ingredient => ingredient.Allergens.Any(need.Means.Contains))
                    .Select(ingredient => new ConcernedIngredient(
                        ingredient,
                        [.. ingredient.Allergens.Where(need.Means.Contains)],
                        Substitution.StandInFor(ingredient, card, need, needs, pantry)
                    )),
            ],
            [
                .. card.Bread.Ingredients.SelectMany(ingredient =>
                    ingredient.Doubts.Where(doubt => Touches(doubt, [need])).Select(doubt => (ingredient, doubt))
                ),
            ]
        );

    private static IReadOnlyList<SharedPlace> Sharing(FormulaCard card, AllergenWord need, IReadOnlyList<FormulaCard> cards) =>
        [
            .. SharedPlace
                .Of(card.Bread)
                .Select(way => new SharedPlace(
                    way,
                    [
                        .. cards
                            .Where(other =>
                                other != card && SharedPlace.Of(other.Bread).Contains(way) && other.Bread.Allergens.Any(need.Means.Contains)
                            )
                            .Select(other => other.Bread),
                    ]
                ))
                .Where(shared => shared.With.Count > 0),
        ];

    /// <summary>True if a doubt is about one of the needs, or about nobody knows what.</summary>
    internal static bool Touches(AllergenDoubt doubt, IReadOnlyList<AllergenWord> needs) =>
        doubt.Maybe.Count == 0 || doubt.Maybe.Any(maybe => needs.Any(need => need.Means.Contains(maybe)));
}
