using ClassKit.Baking.Cooking;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Packs;

namespace ClassKit.LessonPacks.Tests.Requisitions;

/// <summary>A fryer is filled once, whoever fries what in it. Common practice, no source; by hand from 1500 g a fryer.</summary>
public sealed class FryerFillingTests
{
    private static readonly LessonFormula Fritters = LessonReader
        .Read(Repository.PathOf("lessons", "no-oven-in-the-house"))
        .Model!.Formulas[2];

    /// <summary>Four teams fry two breads each.</summary>
    [Theory]
    [InlineData(null, 6000)]
    [InlineData(1, 1500)]
    [InlineData(2, 3000)]
    [InlineData(4, 6000)]
    [InlineData(9, 6000)]
    public void Fat_is_ordered_by_the_fryer_and_not_by_the_team_or_the_bread(int? fryers, double grams)
    {
        var pack = Pack(fryers, Fritters, Other(1500, SurfaceShare.Fryer));

        Assert.Equal(grams, Fat(pack).Mass.Grams);
        Assert.Equal(2, Fat(pack).Filling!.For.Count);
        // Eight loads share it alike.
        Assert.All(pack.Cards, card => Assert.Equal(grams / 8, card.FryingFat.Grams, 9));
    }

    [Fact]
    public void One_fat_is_as_much_as_the_bread_takes_that_takes_most() =>
        Assert.Equal(4000, Fat(Pack(2, Fritters, Other(2000, SurfaceShare.Fryer))).Mass.Grams);

    /// <summary>Lessons written before fryers were counted say a batch; the most of what a batch takes is the fryer's.</summary>
    [Fact]
    public void What_is_written_for_a_batch_fills_a_fryer_as_well_and_a_greased_bowl_does_not()
    {
        var other = Other(1500, SurfaceShare.Batch);
        var greased = other with { Surfaces = [.. other.Surfaces, other.Surfaces[0] with { Amount = Mass.FromGrams(5) }] };

        Assert.Equal(3000 + 4 * 5, Fat(Pack(2, Fritters, greased)).Mass.Grams);
    }

    [Fact]
    public void What_is_baked_fills_no_fryer()
    {
        var baked = Other(1500, SurfaceShare.Batch) with
        {
            Steps = [.. Fritters.Steps.Select(step => step.IsCooking ? step with { Way = CookingWay.Oven } : step)],
        };

        Assert.Null(baked.FryingFat);
        Assert.Equal(3000 + 4 * 1500, Fat(Pack(2, Fritters, baked)).Mass.Grams);
    }

    /// <summary>Twelve students in teams of four are three teams, and four fryers are one too many for them.</summary>
    [Theory]
    [InlineData(16, 6000)]
    [InlineData(12, 4500)]
    [InlineData(32, 6000)]
    public void The_workbook_follows_teams_and_fryers(int students, double grams)
    {
        var changed = BuiltPack.NoOven.Recalculated("requisition.xlsx", $"w.active['B4'] = {students}");
        var row = Enumerable
            .Range(10, 40)
            .First(row => changed.Find(new("Requisition", row, 1))?.Stored.Text == Fritters.FryingFat!.Ingredient.Name);
        var fryers = Enumerable
            .Range(1, 30)
            .First(column =>
                changed.Find(new("Requisition", 9, column))?.Stored.ToString().StartsWith("Fryers", StringComparison.Ordinal) == true
            );

        Assert.Equal(grams, changed.Find(new("Requisition", row, fryers))!.Stored.Number, 9);
    }

    /// <summary>What a piece costs is the same on the page and in the workbook, the fat in it.</summary>
    [Fact]
    public void A_piece_costs_the_same_on_the_page_and_in_the_workbook()
    {
        var workbook = BuiltPack.NoOven.Workbook("requisition.xlsx");
        var row = Enumerable
            .Range(10, 60)
            .First(row =>
                workbook.Find(new("Requisition", row, 1))?.Stored.Text.StartsWith("Ingredients of one piece", StringComparison.Ordinal)
                == true
            );
        var profile = ClassProfileReader.Read(Repository.PathOf("demo-cohort", "no-oven-class.md")).Model!;
        var pack = ComputedPack.Build(LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model!, profile).Value;
        foreach (var (index, card) in pack.Cards.Index())
            Assert.Equal(
                (double)card.CostAt(profile.Prices)!.PerPiece.Amount,
                workbook.Find(new("Requisition", row, index + 2))!.Stored.Number,
                2e-3
            );
    }

    private static LessonFormula Other(double grams, SurfaceShare each) =>
        Fritters with
        {
            Formula = Fritters.Formula with { Id = "other", Title = "Other fritters" },
            Surfaces = [Fritters.Surfaces[0] with { Amount = Mass.FromGrams(grams), Each = each }],
        };

    private static ComputedPack Pack(int? fryers, params LessonFormula[] breads) =>
        ComputedPack
            .Build(
                LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model! with
                {
                    Formulas = breads,
                    Demonstrations = [],
                },
                ClassProfileReader.Read(Repository.PathOf("demo-cohort", "no-oven-class.md")).Model! with
                {
                    Appliances = new Dictionary<EquipmentKind, Appliance> { [EquipmentKind.Fryer] = new(fryers, 1, 15) },
                }
            )
            .Value;

    private static Lessons.Purchasing.RequisitionLine Fat(ComputedPack pack) =>
        pack.Requisition.Single(line => line.Ingredient.Id == Fritters.FryingFat!.Ingredient.Id);
}
