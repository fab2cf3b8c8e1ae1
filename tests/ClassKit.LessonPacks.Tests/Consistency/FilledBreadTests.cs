using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Observations;
using ClassKit.Lessons.Packs;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>
/// By hand: four teams make six buns of 20 g of filling each, 480 g; a bun of 40 g of dough weighs 60 g. What is inside changes nothing of
/// the dough.
/// </summary>
public sealed class FilledBreadTests
{
    private static readonly Ingredient Almonds = IngredientCatalog.All.First(ingredient => ingredient.Name == "Almonds");

    private static readonly LessonFormula Plain = LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model!.Formulas[
        0
    ];

    private static readonly LessonFormula Filled = Plain with
    {
        Surfaces = [.. Plain.Surfaces, new(Almonds, Mass.FromGrams(20), SurfaceShare.Piece, "the filling") { IsFilling = true }],
    };

    [Fact]
    public void What_is_filled_in_is_ordered_and_declared()
    {
        var pack = Pack(Filled);

        Assert.Equal(20.0 * 6 * 4, pack.Requisition.Single(line => line.Ingredient.Id == Almonds.Id).Mass.Grams);
        Assert.Contains(pack.Allergens, allergen => allergen.Name == "almond");
        Assert.DoesNotContain(Pack(Plain).Allergens, allergen => allergen.Name == "almond");
    }

    [Fact]
    public void The_dough_is_what_it_was()
    {
        var (plain, filled) = (Pack(Plain), Pack(Filled));

        Assert.Equal(plain.Cards[0].EffectiveHydrationPercent, filled.Cards[0].EffectiveHydrationPercent);
        Assert.Equal(plain.Cards[0].Batch.Weighed, filled.Cards[0].Batch.Weighed);
        Assert.Equal(plain.Comparison[0].PerPiece.Held.Baked, filled.Comparison[0].PerPiece.Held.Baked);
    }

    [Fact]
    public void A_piece_is_heavier_by_it_before_and_after_and_its_height_is_not_forecast()
    {
        var (plain, filled) = (Pack(Plain), Pack(Filled));
        Prediction? Of(ComputedPack pack, Measure measure) => Prediction.Of(measure, pack.Comparison[0], pack.BoilingPoint);

        Assert.Equal(Of(plain, Measure.MassBefore)!.Value.Typical + 20, Of(filled, Measure.MassBefore)!.Value.Typical, 9);
        // All of it is there after cooking, or it lost as much as the dough.
        Assert.True(Of(filled, Measure.MassAfter)!.Value.High > Of(plain, Measure.MassAfter)!.Value.High + 20 * 0.95);
        Assert.True(Of(filled, Measure.BakeLoss)!.Value.Low <= Of(plain, Measure.BakeLoss)!.Value.Low);
        Assert.Equal(Of(plain, Measure.BakeLoss)!.Value.High, Of(filled, Measure.BakeLoss)!.Value.High, 9);
        Assert.NotNull(Of(plain, Measure.Height));
        Assert.Null(Of(filled, Measure.Height));
    }

    private static ComputedPack Pack(LessonFormula bread) =>
        ComputedPack
            .Build(
                LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model! with
                {
                    Formulas = [bread],
                    Demonstrations = [],
                },
                ClassProfileReader.Read(Repository.PathOf("demo-cohort", "no-oven-class.md")).Model!
            )
            .Value;
}
