using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Costing;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Lessons.Cards;

/// <summary>A formula scaled for one team.</summary>
/// <param name="Bread">The lesson's formula.</param>
/// <param name="Pieces">How many pieces the team makes.</param>
/// <param name="Batch">The batch, weighed on the class's scales.</param>
/// <param name="Lines">The batch's lines with their household measures, in the same order.</param>
/// <param name="Mix">What the mixed dough or batter comes to in this kitchen.</param>
/// <param name="Advice">What to mind while weighing and mixing.</param>
public sealed record FormulaCard(
    LessonFormula Bread,
    int Pieces,
    Batch Batch,
    IReadOnlyList<CardLine> Lines,
    MixBalance Mix,
    IReadOnlyList<Advice> Advice
)
{
    /// <summary>The teams that make it, by their numbers from 1; none where the instructor does.</summary>
    public required IReadOnlyList<int> Teams { get; init; }

    /// <summary>What those teams are called, in the same order.</summary>
    public required IReadOnlyList<string> TeamNames { get; init; }

    /// <summary>What it takes of a steamer, where the profile says how wide one is.</summary>
    public SteamerLoad? Steamed { get; init; }

    /// <summary>True if the instructor alone makes it, once for all.</summary>
    public bool IsInstructors => Teams.Count == 0;

    /// <summary>How often it is made: by each of its teams, or by the instructor.</summary>
    public int Loads => Math.Max(1, Teams.Count);

    /// <summary>In degrees Celsius: what rests cooler than this is meant to be cooler than any room.</summary>
    private const double RoomFrom = 20;

    /// <summary>What the team takes for tins, boards and tops.</summary>
    public IReadOnlyList<SurfaceLine> Surfaces =>
        [
            .. Bread.Surfaces.Select(surface => new SurfaceLine(surface, surface.ForTeam(Bread, Pieces))
            {
                IsFryers = surface == Bread.FryingFat,
            }),
        ];

    /// <summary>How much of a fryer's fat a load is charged with: what fryers take, by all loads that are fried in it; none where it is not
    /// fried.</summary>
    public Mass FryingFat { get; private init; }

    /// <summary>The cards with their shares of the fat that fryers are filled with.</summary>
    internal static IReadOnlyList<FormulaCard> Charged(IReadOnlyList<FormulaCard> cards, ClassProfile profile)
    {
        var fillings = FryerFilling.Of(cards, profile);
        return
        [
            .. cards.Select(card =>
                fillings.FirstOrDefault(filling => filling.Fat.Id == card.Bread.FryingFat?.Ingredient.Id) is { } filling
                    ? card with
                    {
                        FryingFat = filling.PerLoad(cards),
                    }
                    : card
            ),
        ];
    }

    /// <summary>What is mixed for the starter of a line, for one team; empty for other lines, and where no build is written down.</summary>
    public IReadOnlyList<(Ingredient Ingredient, Mass Mass)> BuildOf(BatchLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Bread.StarterBuild is { } build && line.Ingredient.StarterOf is not null ? build.For(line.Ingredient, line.Exact) : [];
    }

    /// <summary>
    /// The mixings of a line's starter, the first before the others; empty for other lines, and where no build is written down.
    /// </summary>
    public IReadOnlyList<StarterStage> StagesOf(BatchLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Bread.StarterBuild is { } build && line.Ingredient.StarterOf is not null ? build.StagesFor(line.Ingredient, line.Exact) : [];
    }

    /// <summary>
    /// Egg in percent of the flour: poured like a liquid, and counted with the liquids by whoever asks how wet a dough is.
    /// </summary>
    public double EggPercent => Bread.Formula.Lines.Where(line => line.Ingredient.Role == IngredientRole.Egg).Sum(line => line.Percent);

    /// <summary>Water that boils off while the team cooks its paste; none where no paste is cooked.</summary>
    public Band<Mass> BoilsOff => Bread.BoiledOffPercent.Map(percent => Batch.Weighed * (percent / Bread.Formula.TotalPercent));

    /// <summary>Liquids in percent of the flour, counted whole, egg aside.</summary>
    public double AddedLiquidPercent => DoughWater.AddedLiquidPercent(Bread.Formula);

    /// <summary>The water added to the flour by all ingredients, in percent of it.</summary>
    public double EffectiveHydrationPercent => DoughWater.EffectivePercent(Bread.Formula);

    /// <summary>Sodium in one piece, from salt, soda and baking powder.</summary>
    public Mass SodiumPerPiece => Sodium.In(Bread.Formula, Bread.PieceMass).Value;

    /// <summary>What the team's batch costs; null where an ingredient has no price.</summary>
    public BatchCost? CostAt(PriceList? prices) =>
        prices is not null && BatchCost.Of(Paid(prices), Pieces, prices.Packs).TryGet(out var cost, out _) ? cost : null;

    /// <summary>What steps take of an ingredient before the rest of it, in the order of the method.</summary>
    public IReadOnlyList<ApartLine> Apart => [.. ApartLine.Of(Bread, Lines)];

    /// <summary>Minutes from the first step to the last, shortest and longest, with the waits that the method asks for.</summary>
    public (int Min, int Max) Minutes
    {
        get
        {
            List<WaitWindow> waits = [.. Bread.Steps.SkipLast(1).Select(step => step.Work.Wait).Where(wait => wait.MinMinutes > 0)];
            return (
                Bread.Steps.Sum(step => step.MinMinutes) + waits.Sum(wait => wait.MinMinutes),
                Bread.Steps.Sum(step => step.MaxMinutes) + waits.Sum(wait => wait.MaxMinutes)
            );
        }
    }

    internal static Computed<FormulaCard> For(LessonFormula formula, ClassProfile profile, PackSettings settings) =>
        Scaling
            .FromPieces(
                formula.Formula,
                formula.TeamMakes ?? profile.PiecesPerTeam,
                formula.PieceMass,
                DoughLoss.Of(formula.WeighedBesidesPercent),
                new Scales(profile.ScaleResolution, Finer(profile))
            )
            .Then(batch =>
                MixBalance
                    .Of(formula, profile.KitchenTemperature, settings.Mixing.In(profile))
                    .Then<FormulaCard>(mix => new FormulaCard(
                        formula,
                        formula.TeamMakes ?? profile.PiecesPerTeam,
                        batch,
                        [.. batch.Lines.Select(CardLine.For)],
                        mix,
                        [.. Below(batch), .. OfMix(mix), .. OfRises(formula, profile), .. OfSoda(formula, batch)]
                    )
                    {
                        Teams = formula.Place?.Teams ?? [.. Enumerable.Range(1, profile.Teams)],
                        TeamNames = [.. (formula.Place?.Teams ?? Enumerable.Range(1, profile.Teams)).Select(profile.TeamName)],
                    })
            );

    /// <summary>
    /// The batch as it is paid for: with what touches it, a starter as what it is built of, one that is kept as the flour in it, and
    /// without water from the tap that no price list names.
    /// </summary>
    private Batch Paid(PriceList prices) =>
        Batch with
        {
            Lines =
            [
                .. Batch
                    .Lines.SelectMany(line =>
                        BuildOf(line) is { Count: > 0 } build ? build.Select(part => Taken(part.Ingredient, part.Mass)) : [line]
                    )
                    .Concat(Surfaces.Select(taken => Taken(taken.Surface.Ingredient, taken.IsFryers ? FryingFat : taken.Mass)))
                    .Select(line =>
                        line.Ingredient.StarterOf is { } fed && !prices.Packs.ContainsKey(line.Ingredient.Id)
                            ? Taken(fed, line.Weighed * line.Ingredient.StarterFlourShare)
                            : line
                    )
                    .Where(line => !TapWater.Is(line.Ingredient) || prices.Packs.ContainsKey(line.Ingredient.Id)),
            ],
        };

    private BatchLine Taken(Ingredient ingredient, Mass mass) => new(ingredient, 0, mass, mass, Batch.Scales.Small);

    /// <summary>A small scale that is coarser than the large one is left in the cupboard.</summary>
    private static Mass Finer(ClassProfile profile) =>
        profile.SmallScaleResolution < profile.ScaleResolution ? profile.SmallScaleResolution : profile.ScaleResolution;

    private static IEnumerable<Advice> OfMix(MixBalance mix)
    {
        if (mix.OutOfReach is { } why)
            yield return new(why.Code, $"{why}", "heat balance");
        const string source = "heat balance; butter melts at 32 °C to 35 °C";
        if (mix.CoolsMeltedFat)
            yield return new(
                "fat-cools",
                FormattableString.Invariant(
                    $"Butter melts at 32 °C to 35 °C: melt it through, then let all come down to {mix.Warmed[0].Temperature.Celsius:0} °C. It sets as it meets what is cooler: pour slowly and stir all the while, so that the specks are too fine to see."
                ),
                source
            );
        else if (mix.SetsFat)
            yield return new(
                "fat-sets",
                "The butter goes in melted and the mix is too cool for it to stay so: pour it slowly and stir all the while, so that it sets in specks too fine to see.",
                source
            );
    }

    /// <summary>
    /// A dough that is to be cooler than the kitchen rises sooner than its card says. What rises in a refrigerator is not meant to be as
    /// warm as the room.
    /// </summary>
    private static IEnumerable<Advice> OfRises(LessonFormula formula, ClassProfile profile)
    {
        var rises = formula
            .Steps.Where(step =>
                step is { IsCooking: false, Work.People: 0, Temperature: { } at }
                && at.Celsius >= RoomFrom
                && at.Celsius < profile.KitchenTemperature.Celsius
            )
            .ToList();
        if (rises.Count == 0)
            yield break;
        yield return new(
            "kitchen-too-warm",
            FormattableString.Invariant(
                $"Your kitchen is warmer than the {TemperatureNotation.AsWritten(rises.MinBy(step => step.Temperature!.Value.Celsius)!.Temperature!.Value)} of {string.Join(" and ", rises.Select(step => step.Name.ToLowerInvariant()).Distinct())}. Find a cooler place or stand the bowl in cool water; where neither is to be had, look sooner."
            ),
            "common practice, no source"
        );
    }

    private static IEnumerable<Advice> OfSoda(LessonFormula formula, Batch batch)
    {
        if (SodaBalance.Of(formula.Working, batch.Exact) is { IsTasted: true } soda)
            yield return new(
                "soda-left",
                FormattableString.Invariant(
                    $"Of {soda.Soda.Grams:0.##} g of soda no acid meets {soda.Left.Low.Grams:0.##} g to {soda.Left.High.Grams:0.##} g: it tastes soapy, and browns and yellows the crumb."
                ),
                "neutralising values; from which share on it is tasted: common practice, no source"
            );
    }

    private static IEnumerable<Advice> Below(Batch batch) =>
        batch
            .Lines.Where(line => line.IsBelowScale)
            .Select(line => new Advice(
                "below-scale",
                FormattableString.Invariant(
                    $"{line.Ingredient.Name}: {line.Exact.Grams:0.###} g is less than the scale can show ({line.Resolution.Grams:0.###} g). Weigh it for several teams at once and share it out, or measure it by the spoon."
                ),
                "common practice, no source"
            ));
}
