using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Purchasing;

/// <summary>An order has one line for an ingredient, under one name, whichever bread comes first.</summary>
public sealed class OneNameTests
{
    private static readonly LessonFormula Plain = SampleLesson.Popovers;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Breads_that_call_it_otherwise_order_it_as_the_pantry_does(bool isOwnFirst)
    {
        LessonFormula[] breads = isOwnFirst ? [Calling("Milk of the farm"), Plain] : [Plain, Calling("Milk of the farm")];
        Assert.Equal(IngredientCatalog.Get("whole_milk").Name, Ordered(breads));
    }

    [Fact]
    public void Two_names_of_which_neither_is_the_pantry_s_give_way_to_it() =>
        Assert.Equal(
            IngredientCatalog.Get("whole_milk").Name,
            Ordered(Calling("Milk of the farm"), Calling("Fresh milk", SampleLesson.Buns))
        );

    [Fact]
    public void A_name_that_all_breads_use_stays() =>
        Assert.Equal("Milk of the farm", Ordered(Calling("Milk of the farm"), Calling("Milk of the farm", SampleLesson.Buns)));

    private static string Ordered(params LessonFormula[] breads) =>
        Assert
            .Single(ComputedPack.Build(SampleLesson.Of(breads), SampleLesson.Class).Value.Requisition, line =>
                line.Ingredient.Id == "whole_milk"
            )
            .Ingredient.Name;

    /// <summary>The bread with its milk called as an author's text has it.</summary>
    private static LessonFormula Calling(string name, LessonFormula? bread = null)
    {
        bread ??= Plain;
        return bread with
        {
            Formula = bread.Formula with
            {
                Id = bread.Formula.Id + (bread == Plain ? "-own" : ""),
                Lines =
                [
                    .. bread.Formula.Lines.Select(line =>
                        line.Ingredient.Id == "whole_milk"
                            ? line with
                            {
                                Ingredient = line.Ingredient with { Name = name, PantryName = line.Ingredient.Name },
                            }
                            : line
                    ),
                ],
            },
        };
    }
}
