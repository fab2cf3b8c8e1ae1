using ClassKit.Baking.Cooking;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;
using ClassKit.Lessons.Observations;
using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Tests.Packs;

public sealed class SteamerLoadTests
{
    /// <summary>Buns of the sample, steamed without a tin, and written down for three places.</summary>
    private static readonly LessonFormula Steamed = SampleLesson.Buns with
    {
        Shape = FreeStanding.Steamed,
        Steps =
        [
            .. SampleLesson.Buns.Steps.Select(step =>
                step.Name == "Bake"
                    ? step with
                    {
                        Way = CookingWay.Steamer,
                        Temperature = null,
                        Work = step.Work with { Uses = [new(EquipmentKind.Steamer, 3)] },
                    }
                    : step
            ),
        ],
    };

    [Theory]
    // E. W. Weisstein, MathWorld, "Circle Packing": seven rounds lie in one of three times their width, two in one of twice, 19 in 4.8637
    [InlineData(300, 70, 7)]
    [InlineData(299, 70, 5)]
    [InlineData(200, 70, 2)]
    [InlineData(199, 70, 1)]
    [InlineData(487, 70, 19)]
    // What is wider than its basket lies in one alone
    [InlineData(100, 120, 1)]
    public void A_basket_holds_as_many_as_lie_in_it_two_fingers_apart(double across, double wide, int holds) =>
        Assert.Equal(holds, RoundPlace.Holds(across, wide));

    /// <summary>What holds more rounds is at least as wide, and they fill no more than all of it.</summary>
    [Fact]
    public void No_more_lie_in_a_basket_than_its_area_allows()
    {
        var before = 0;
        for (var across = 100; across < 800; across++)
        {
            var holds = RoundPlace.Holds(across, 70);
            Assert.True(holds >= before && (holds == 1 || holds * 100.0 * 100 <= across * (double)across));
            before = holds;
        }
    }

    [Fact]
    public void The_plan_takes_the_baskets_that_buns_of_the_predicted_width_fill()
    {
        var pack = Pack(280);
        var (card, compared) = (pack.Cards[0], pack.Comparison[0]);
        var predicted = Prediction.Of(Measure.Diameter, compared, pack.BoilingPoint)!.Value.Typical;

        Assert.Equal(predicted, card.Steamed!.PieceMillimetres, 1e-9);
        var baskets = (int)Math.Ceiling(card.Pieces / (double)RoundPlace.Holds(280, predicted));
        Assert.NotEqual(3, baskets);
        Assert.Equal(
            baskets,
            BenchClasses
                .Of(pack.Lesson, pack.Class)
                .Breads[0]
                .Steps.SelectMany(step => step.Uses)
                .Single(use => use.Kind == EquipmentKind.Steamer.Place)
                .Count
        );
        Assert.Equal(pack.Lesson.Formulas[0], card.Bread);
        Assert.Equal(pack.Lesson.Formulas[0], compared.Bread);
    }

    [Fact]
    public void Where_no_width_is_stated_what_is_written_stands()
    {
        var pack = Pack(null);

        Assert.Null(pack.Cards[0].Steamed);
        Assert.Equal(3, pack.Lesson.Formulas[0].Steps.Single(step => step.IsCooking).Work.Uses.Single().Count);
    }

    private static ComputedPack Pack(double? across) =>
        ComputedPack
            .Build(
                SampleLesson.Of(Steamed),
                SampleLesson.Class with
                {
                    Appliances = new Dictionary<EquipmentKind, Appliance>
                    {
                        [EquipmentKind.Steamer] = new(2, 2, 10) { PlaceMillimetres = across },
                    },
                }
            )
            .Value;
}
