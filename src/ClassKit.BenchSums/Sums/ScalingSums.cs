using ClassKit.Baking.Batches;
using ClassKit.Baking.Costing;
using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Preferments;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Sums;

/// <summary>Percentages, batches, bowls and what is mixed ahead.</summary>
internal static class ScalingSums
{
    private static readonly SumInput<BakersFormula> Formula = Ask.Formula("bread flour 100, water 65, instant yeast 1, salt 2");
    private static readonly SumInput<IReadOnlyList<WeighedIngredient>> Recipe = Ask.For(
        "recipe",
        "the recipe",
        TypedFormula.Masses,
        "bread flour 64 oz, whole egg 28 oz, sugar 8 oz"
    );
    private static readonly SumInput<Mass> Dough = Ask.For("dough", "the dough", Notations.Mass, "10 kg");
    private static readonly SumInput<int> Pieces = Ask.For("pieces", "how many pieces", Notations.Count, "24");
    private static readonly SumInput<Mass> Each = Ask.For("each", "the dough in one", Notations.Mass, "60 g");
    private static readonly SumInput<Percent> Loss = Ask.Usually(
        "loss",
        "what does not become pieces, of the mixed dough",
        Notations.Percent,
        "2 %"
    );
    private static readonly SumInput<Ingredient> Short = Ask.For("ingredient", "what is short", Ingredients.Notation, "bread flour");
    private static readonly SumInput<Mass> OnHand = Ask.For("on-hand", "how much of it there is", Notations.Mass, "3 kg");
    private static readonly SumInput<Mass> Bowl = Ask.For("bowl", "the most that the bowl takes", Notations.Mass, "4 kg");
    private static readonly SumInput<Mass> Flour = Ask.For("flour", "all flour of the dough", Notations.Mass, "2 kg");
    private static readonly SumInput<Percent> Ahead = Ask.For(
        "ahead",
        "the share of the flour that is mixed ahead",
        Notations.Percent,
        "30 %"
    );
    private static readonly SumInput<BakersFormula> Preferment = Ask.For(
        "preferment",
        "what is mixed ahead, in percent of its own flour",
        TypedFormula.Notation,
        "bread flour 100, water 100, instant yeast 0.2"
    );
    private static readonly SumInput<double> Portions = Ask.For("portions", "portions of the recipe", Notations.Number, "5");
    private static readonly SumInput<Mass> Size = Ask.For("size", "the size of one", Notations.Mass, "8 oz");
    private static readonly SumInput<double> WantedPortions = Ask.For("wanted-portions", "portions wanted", Notations.Number, "10");
    private static readonly SumInput<Mass> WantedSize = Ask.For("wanted-size", "the size wanted", Notations.Mass, "4 oz");

    public static IReadOnlyList<BenchSum> All { get; } =
    [
        new("percentages", "What are the baker's percentages?", SumTopic.Scaling, [Recipe], values =>
            SumResult.Of(TypedFormula.FromMasses(values.Of(Recipe)), formula =>
                [.. formula.Lines.Select(line => new SumLine(line.Ingredient.Name, new SumQuantity.OfPercent(line.Percent)))]
            )
        ),
        new("batch", "What to weigh for so much dough?", SumTopic.Scaling, [Formula, Dough], values =>
            Weighed(Scaling.FromDough(values.Of(Formula), values.Of(Dough), Scales.Common))
        ),
        new("batch-for-pieces", "What to weigh for so many pieces?", SumTopic.Scaling, [Formula, Pieces, Each, Loss], values =>
            Weighed(
                Scaling.FromPieces(
                    values.Of(Formula),
                    values.Of(Pieces),
                    values.Of(Each),
                    DoughLoss.Of(values.Of(Loss).Value),
                    Scales.Common
                )
            )
        ),
        new("batch-from-what-is-short", "How far does an ingredient go?", SumTopic.Scaling, [Formula, Short, OnHand], values =>
            Weighed(Scaling.FromIngredient(values.Of(Formula), values.Of(Short), values.Of(OnHand), Scales.Common))
        ),
        new("bowls", "How many batches for the bowl?", SumTopic.Scaling, [Dough, Bowl], values =>
            SumResult.Of(MixerBowl.Divide(values.Of(Dough), values.Of(Bowl)), bowls =>
                [new("batches", new SumQuantity.OfCount(bowls.Batches)), new("dough in one", new SumQuantity.OfMass(bowls.Each))]
            )
        ),
        new("preferment", "What is mixed ahead, and what is left to add?", SumTopic.Scaling, [Formula, Flour, Ahead, Preferment], values =>
            SumResult.Of(
                FormulaSheet.For(
                    values.Of(Formula),
                    [SubMix.FromOwnPercentages("preferment", values.Of(Ahead).Value, values.Of(Preferment).Lines)],
                    values.Of(Flour)
                ),
                Sheet
            )
        ),
        new("hydration", "How wet is the dough?", SumTopic.Scaling, [Formula], values =>
            SumResult.Of(Hydration.Of(values.Of(Formula)), Wetness)
        ),
        new("portion-factor", "By what is a recipe multiplied?", SumTopic.Scaling, [Portions, Size, WantedPortions, WantedSize], values =>
            SumResult.Of(
                PortionFactor.Of(values.Of(Portions), values.Of(Size), values.Of(WantedPortions), values.Of(WantedSize)),
                "factor",
                factor => new SumQuantity.OfTimes(factor)
            )
        ),
    ];

    private static Computed<SumResult> Weighed(Computed<Batch> batch) =>
        SumResult.Of(batch, made =>
            [
                .. made.Lines.Select(line => new SumLine(line.Ingredient.Name, new SumQuantity.OfMass(line.Weighed))),
                new("dough", new SumQuantity.OfMass(made.Weighed)),
            ]
        );

    private static IReadOnlyList<SumLine> Sheet(FormulaSheet sheet) =>
        [
            .. sheet
                .Rows.Where(row => row.InSubMixes[0].Grams > 0)
                .Select(row => new SumLine($"ahead: {row.Ingredient.Name}", new SumQuantity.OfMass(row.InSubMixes[0]))),
            .. sheet
                .Rows.Where(row => row.Final.Grams > 0)
                .Select(row => new SumLine($"then: {row.Ingredient.Name}", new SumQuantity.OfMass(row.Final))),
            new("dough", new SumQuantity.OfMass(sheet.Dough)),
        ];

    private static IReadOnlyList<SumLine> Wetness(Hydration hydration) =>
        [
            new("liquids counted whole", new SumQuantity.OfPercent(hydration.AddedLiquidPercent)),
            new("water of everything but the flour", new SumQuantity.OfPercent(hydration.EffectivePercent)),
            new("all water, the flour's own too", new SumQuantity.OfPercent(hydration.AllWaterPercent)),
            new("water, of the whole dough", new SumQuantity.OfPercent(PerHundred.Of(hydration.MoistureShare))),
        ];
}
