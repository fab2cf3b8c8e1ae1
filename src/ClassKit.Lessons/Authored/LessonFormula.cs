using ClassKit.Baking.Allergens;
using ClassKit.Baking.Altitude;
using ClassKit.Baking.Cooking;
using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Pictures;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Lessons.Authored;

/// <summary>A baker's formula with everything needed to bake from it.</summary>
/// <param name="Formula">The percentages.</param>
/// <param name="Piece">What one piece is called, in the singular: <c>popover</c>.</param>
/// <param name="PieceMass">Dough or batter per piece.</param>
/// <param name="LossPercent">Of the mixed dough, lost to bowls, benches and scraping; 0 to less than 100.</param>
/// <param name="Why">What this bread shows about its leavening: one or two sentences.</param>
/// <param name="MixTemperature">What the mixed dough or batter should come to; null where it is taken as it comes. What it does come to is
/// <see cref="MixBalance"/>'s.</param>
/// <param name="BakeFrom">The heat as the pieces go in: that of the first step in an oven, on a plate or in fat; water's boiling point at
/// sea level where nothing is set.</param>
/// <param name="BakeTo">The heat as they come out: that of the last such step; the same unless it is turned down.</param>
/// <param name="Steps">The method in order.</param>
/// <param name="Equipment">What a team needs.</param>
/// <param name="Cautions">What can hurt someone in this method.</param>
/// <param name="Notes">Markdown: what to look for, how to serve and store.</param>
/// <param name="Traits">How its leavening behaves, for the comparison.</param>
public sealed record LessonFormula(
    BakersFormula Formula,
    string Piece,
    Mass PieceMass,
    double LossPercent,
    TextTemplate Why,
    Temperature? MixTemperature,
    Temperature BakeFrom,
    Temperature BakeTo,
    IReadOnlyList<MethodStep> Steps,
    IReadOnlyList<BenchTool> Equipment,
    IReadOnlyList<Caution> Cautions,
    TextTemplate Notes,
    LeaveningTraits Traits
)
{
    /// <summary>What its gas blows up, where the author says so; null where leavening and formula tell.</summary>
    public CrumbStructure? Structure { get; init; }

    /// <summary>What a cup of its batter weighs over a cup of water, as measured; null where nobody has.</summary>
    public double? SpecificGravity { get; init; }

    /// <summary>How its starter is built before the class; null for a bread without one, or where it comes ripe from elsewhere.</summary>
    public StarterBuild? StarterBuild { get; init; }

    /// <summary>Its place in a series that the teams share out; null for a bread that every team makes.</summary>
    public SeriesPlace? Place { get; init; }

    /// <summary>
    /// What is left of the strength of a leavening that is old, by its ingredient's id: above 0 and below 1. What is not named has all of
    /// it.
    /// </summary>
    public IReadOnlyDictionary<string, double> Strengths { get; init; } = new Dictionary<string, double>();

    /// <summary>True if a leavening in it has grown old and nobody knows what is left of it.</summary>
    public bool HasAgedLeavening => Place is not null && Place.Changes.Any(change => change is SeriesChange.Aged);

    /// <summary>
    /// Water that boils off while a paste is cooked before the rest goes in, in percent of the flour; 0 where none is cooked. See
    /// <see cref="PasteDrying"/>.
    /// </summary>
    public Band<double> BoiledOffPercent =>
        PasteDrying.WaterLost.Map(share => share * Formula.Lines.Sum(line => CookedShare(line) * WaterOf(line)));

    /// <summary>The formula of what comes out of the bowl: without the water that boiled off.</summary>
    public BakersFormula Dried =>
        Formula.Lines.All(line => CookedShare(line) == 0)
            ? Formula
            : Formula with
            {
                Lines =
                [
                    .. Formula.Lines.Select(line =>
                        line with
                        {
                            Percent = line.Percent - PasteDrying.WaterLost.Typical * CookedShare(line) * WaterOf(line),
                        }
                    ),
                ],
            };

    /// <summary>
    /// What has to be weighed out besides what the pieces hold, as a share of it in percent: what stays in bowls, and what boils off.
    /// </summary>
    public double WeighedBesidesPercent =>
        PerHundred.Of(1 - (1 - PerHundred.Share(LossPercent)) * Dried.TotalPercent / Formula.TotalPercent);

    /// <summary>The formula as far as it works: of an old leavening only what still makes gas, and no water that boiled off.</summary>
    public BakersFormula Working =>
        Strengths.Count == 0
            ? Dried
            : Dried with
            {
                Lines =
                [
                    .. Dried.Lines.Select(line =>
                        line with
                        {
                            Percent = line.Percent * Strengths.GetValueOrDefault(line.Ingredient.Id, 1),
                        }
                    ),
                ],
            };

    /// <summary>Flour's own water stays in the starch that swells.</summary>
    private static double WaterOf(FormulaLine line) =>
        line.Ingredient.Role == IngredientRole.Flour ? 0 : line.Percent * line.Ingredient.WaterShare;

    /// <summary>How much of an ingredient is cooked to a paste: from 0 for none of it to 1.</summary>
    private double CookedShare(FormulaLine line) =>
        Steps
            .SelectMany(step => step.Work.Heats)
            .FirstOrDefault(heat => heat.Kind == HeatKind.Cooked && heat.Ingredient.Id == line.Ingredient.Id)
            ?.Share
        ?? 0;

    /// <summary>The steps in which it is cooked, in order.</summary>
    public IReadOnlyList<MethodStep> Cooking => [.. Steps.Where(step => step.IsCooking)];

    /// <summary>What it is changed to in a high kitchen, by the published tables and rules; impossible where nobody bakes.</summary>
    /// <param name="metres">Above sea level.</param>
    public Computed<AltitudeFormula> AtAltitude(double metres) =>
        AltitudeFormula.For(
            Formula,
            metres,
            heats: [.. Cooking.Where(step => step.IsBaking).Select(step => new GivenHeat(step.Way!.Value, step.Temperature))],
            structure: Structure
        );

    /// <summary>True if nothing but an oven bakes it, whatever reheats it.</summary>
    public bool IsOvenBread => Steps.All(step => !step.IsBaking || step.Way == CookingWay.Oven);

    /// <summary>True if its dough is frozen before it is baked.</summary>
    public bool IsFrozenDough => Steps.TakeWhile(step => !step.IsBaking).Any(step => step.IsFreezing) && Steps.Any(step => step.IsBaking);

    /// <summary>How many minutes it may stand ready before it is tasted; null where that does not matter.</summary>
    public int? BestWithinMinutes { get; init; }

    /// <summary>
    /// How many minutes it rests uncut after baking, where that is longer than a class goes on; null where it is cut in class.
    /// </summary>
    public int? CutAfterMinutes { get; init; }

    /// <summary>How many pieces of it a team makes, where that is not what the class makes of every bread; 1 or more, or null.</summary>
    public int? TeamMakes { get; init; }

    /// <summary>Several pieces: <c>popovers</c>.</summary>
    public string Pieces { get; init; } = Piece + "s";

    /// <summary>The cup or tin that a piece bakes in, or how it stands without one; null where nobody has written it down.</summary>
    public BakingShape? Shape { get; init; }

    /// <summary>What is measured, and what to ask when it differs from what was predicted.</summary>
    public IReadOnlyList<Observation> Observations { get; init; } = [];

    /// <summary>The pictures that its text names.</summary>
    public IReadOnlyList<Picture> Pictures { get; init; } = [];

    /// <summary>What touches it besides: for tins, boards and tops.</summary>
    public IReadOnlyList<SurfaceIngredient> Surfaces { get; init; } = [];

    /// <summary>What is filled into a piece besides its dough; none for most.</summary>
    public Mass FillingMass =>
        Mass.FromGrams((double)Surfaces.Where(surface => surface.IsFilling).Sum(surface => (decimal)surface.Amount.Grams));

    /// <summary>
    /// The fat of the fryer; null where it is not fried. Where nothing is written for a fryer it is the most of what a batch takes.
    /// </summary>
    public SurfaceIngredient? FryingFat =>
        Cooking.Any(step => step.Way == CookingWay.Fryer)
            ? Surfaces
                .Where(surface => surface.Ingredient.Role == IngredientRole.Fat && surface.Each is SurfaceShare.Fryer or SurfaceShare.Batch)
                .OrderByDescending(surface => surface.Each == SurfaceShare.Fryer)
                .ThenByDescending(surface => surface.Amount.Grams)
                .FirstOrDefault()
            : null;

    /// <summary>Everything that is in it or touches it, each once, in the order of the formula.</summary>
    public IReadOnlyList<Ingredient> Ingredients =>
        [
            .. Formula
                .Lines.Select(line => line.Ingredient)
                .Concat(Surfaces.Select(surface => surface.Ingredient))
                .DistinctBy(ingredient => ingredient.Id),
        ];

    /// <summary>How many tins or trays a team has for it.</summary>
    public int Tins => Equipment.Where(tool => tool.IsTin).Sum(tool => tool.Count);

    /// <summary>What must be declared, over everything that touches it, each once, by name.</summary>
    public IReadOnlyList<Allergen> Allergens =>
        [
            .. Ingredients
                .SelectMany(ingredient => ingredient.Allergens)
                .Distinct()
                .OrderBy(allergen => allergen.Name, StringComparer.Ordinal),
        ];
}
