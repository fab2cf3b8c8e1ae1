using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Allergies;

/// <summary>A need of the class, held against every bread and every demonstration. For the instructor alone.</summary>
/// <param name="Need">In the words of the class profile.</param>
/// <param name="Breads">Every bread, in the lesson's order, also where nothing is declared.</param>
/// <param name="Shown">The demonstrations that weigh out what holds it or may hold it, in the lesson's order.</param>
public sealed record AllergyConcern(AllergenWord Need, IReadOnlyList<BreadConcern> Breads, IReadOnlyList<ShownConcern> Shown)
{
    internal static IReadOnlyList<AllergyConcern> Of(
        IReadOnlyList<FormulaCard> cards,
        IReadOnlyList<LessonDemonstration> demonstrations,
        ClassProfile profile
    )
    {
        var needs = profile.Allergies.DistinctBy(need => need.Word).ToList();
        return
        [
            .. needs.Select(need => new AllergyConcern(
                need,
                [
                    .. cards.Select(card =>
                        Bread(card, need, needs, profile.Pantry) with
                        {
                            Shares = Sharing(card, need, cards, demonstrations),
                        }
                    ),
                ],
                [
                    // What is not known of a control is not known of its bread, which stands above.
                    .. demonstrations
                        .Select(shown => Demonstration(shown, need))
                        .Where(concern => concern.Declared.Count > 0 || (concern.Unknown.Count > 0 && concern.Shown.ControlOf is null)),
                ]
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
            InDoubt(card.Bread.Ingredients, need)
        );

    private static ShownConcern Demonstration(LessonDemonstration shown, AllergenWord need)
    {
        var weighed = shown.Ingredients.Select(line => line.Ingredient).DistinctBy(ingredient => ingredient.Id).ToList();
        return new(
            shown,
            [
                .. weighed
                    .Select(ingredient => (ingredient, (IReadOnlyList<Allergen>)[.. ingredient.Allergens.Where(need.Means.Contains)]))
                    .Where(found => found.Item2.Count > 0),
            ],
            InDoubt(weighed, need)
        );
    }

    private static IReadOnlyList<(Ingredient Ingredient, AllergenDoubt Doubt)> InDoubt(
        IReadOnlyList<Ingredient> ingredients,
        AllergenWord need
    ) =>
        [
            .. ingredients.SelectMany(ingredient =>
                ingredient.Doubts.Where(doubt => Touches(doubt, [need])).Select(doubt => (ingredient, doubt))
            ),
        ];

    private static List<SharedPlace> Sharing(
        FormulaCard card,
        AllergenWord need,
        IReadOnlyList<FormulaCard> cards,
        IReadOnlyList<LessonDemonstration> demonstrations
    )
    {
        List<SharedPlace> shared = [];
        foreach (var way in SharedPlace.Of(card.Bread))
        {
            var others = cards
                .Where(other => other != card && SharedPlace.Of(other.Bread).Contains(way))
                .Select(other => other.Bread)
                .ToList();
            var shown = demonstrations
                .Where(other => SharedPlace.Of(other).Contains(way))
                .Select(other => Demonstration(other, need))
                .ToList();
            var place = new SharedPlace(way, [.. others.Where(other => other.Allergens.Any(need.Means.Contains))])
            {
                Shown = [.. shown.Where(concern => concern.Declared.Count > 0).Select(concern => concern.Shown)],
                ShownInDoubt =
                [
                    .. shown.Where(concern => concern.Declared.Count == 0 && concern.Unknown.Count > 0).Select(concern => concern.Shown),
                ],
            };
            place = place with { InDoubt = [.. others.Except(place.With).Where(other => InDoubt(other.Ingredients, need).Count > 0)] };
            if (place.IsShared)
                shared.Add(place);
        }
        return shared;
    }

    /// <summary>True if a doubt is about one of the needs, or about nobody knows what.</summary>
    internal static bool Touches(AllergenDoubt doubt, IReadOnlyList<AllergenWord> needs) =>
        doubt.Maybe.Count == 0 || doubt.Maybe.Any(maybe => needs.Any(need => need.Means.Contains(maybe)));
}
