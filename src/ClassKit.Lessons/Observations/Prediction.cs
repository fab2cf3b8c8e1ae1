using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Observations;

/// <summary>What is predicted of one piece, from the formula and its gas budget.</summary>
/// <param name="Measure">What.</param>
/// <param name="Value">In the measure's unit.</param>
/// <param name="From">What it rests on, in words.</param>
public sealed record Prediction(Measure Measure, Band<double> Value, string From)
{
    /// <summary>A cup is filled to within this share of what was meant: 3 g of 60 g. Common practice, no source.</summary>
    public const double FillingError = 0.05;

    /// <summary>
    /// A crumb is done from some 7 °C below the boiling point on: 93 °C (200 °F) where water boils at 100 °C, A. Gardiner and S. Wilson,
    /// The Inquisitive Cook, 1998.
    /// </summary>
    private const double DoneBelowBoiling = 7;

    /// <summary>A crumb of rye is gummy until its starch has set through: some 97 °C. Common practice, no source.</summary>
    private const double RyeDoneBelowBoiling = 3;

    /// <summary>
    /// From this share of the flour on rye makes the crumb. Common practice, no source: half and half is called a mixed bread.
    /// </summary>
    private const double MostlyRye = 0.5;

    /// <summary>The share of its mass that a piece loses in the oven, or however it is cooked; below 0 where it gains. What is filled into it loses
    /// nothing at the least and as much as the dough at the most: from memory.</summary>
    public static Band<double> BakeLoss(LeaveningComparison compared)
    {
        ArgumentNullException.ThrowIfNull(compared);
        var dough = compared.PerPiece.Held.Holding.MassLoss;
        var filling = compared.Bread.FillingMass.Grams;
        var share = filling / (filling + compared.Bread.PieceMass.Grams);
        return new(Math.Min(dough.Low, dough.Low * (1 - share)), dough.Typical * (1 - share), dough.High);
    }

    /// <summary>
    /// True where no model here can say what a measure comes to, whatever the author writes down: no number is better than a wrong one.
    /// </summary>
    public static bool IsBeyondUs(Measure measure, LeaveningComparison compared)
    {
        ArgumentNullException.ThrowIfNull(compared);
        return measure switch
        {
            Measure.Height or Measure.Diameter or Measure.GuessedHeight => !compared.IsRisePredicted
                || compared.Bread.FillingMass.Grams > 0,
            Measure.MassAfter or Measure.BakeLoss => !compared.PerPiece.Held.Holding.IsLossPredicted,
            _ => false,
        };
    }

    /// <summary>
    /// The prediction; null where it takes a cup whose size nobody has written down, or is beyond what is known. A guess is held against
    /// what it is of; what a mix comes to stands in its balance and not here.
    /// </summary>
    /// <param name="measure">What.</param>
    /// <param name="compared">The bread with its gas.</param>
    /// <param name="boilingPoint">Of water in this kitchen.</param>
    public static Prediction? Of(Measure measure, LeaveningComparison compared, Temperature boilingPoint)
    {
        ArgumentNullException.ThrowIfNull(compared);
        if (IsBeyondUs(measure, compared))
            return null;
        var (formula, piece) = (compared.Bread, compared.PerPiece);
        var grams = formula.PieceMass.Grams + formula.FillingMass.Grams;
        return measure switch
        {
            Measure.MassBefore => new(
                measure,
                Filled(new(grams, grams, grams)),
                formula.FillingMass.Grams > 0
                    ? "the card's portion with its filling, to within 5 %"
                    : "the card's portion, filled to within 5 %"
            ),
            Measure.MassAfter => new(measure, Filled(After(grams, BakeLoss(compared))), "the portion as it was filled, less the bake loss"),
            Measure.BakeLoss => new(measure, BakeLoss(compared).Map(PerHundred.Of), LossOf(formula, piece.Held.Holding)),
            Measure.Height or Measure.GuessedHeight => formula.Shape is { } shape
                ? new(
                    measure,
                    Shaped(Baked(piece).Map(volume => shape.HeightOf(volume.Millilitres)), shape),
                    $"the gas held when the walls set, in a portion as it was filled, {shape.Words}; what the shape leaves open is in the range"
                )
                : null,
            Measure.Diameter => formula.Shape is { } shape
                ? new(
                    measure,
                    Shaped(Baked(piece).Map(volume => shape.DiameterOf(volume.Millilitres)), shape),
                    "the same volume at its widest"
                )
                : null,
            Measure.InternalTemperature => new(
                measure,
                new(boilingPoint.Celsius - DoneBelow(formula), boilingPoint.Celsius - DoneBelow(formula) / 2, boilingPoint.Celsius),
                "done from a little below the boiling point on, and never above it while there is water, but for the degree or two that much sugar adds"
            ),
            Measure.MixedTemperature => null,
        };
    }

    /// <summary>
    /// True where the same bread at sea level can be told apart from here. Where its walls and not its gas end the rise in both, no model
    /// says how far they stretch in thinner air.
    /// </summary>
    /// <param name="measure">What.</param>
    /// <param name="here">The bread in this kitchen.</param>
    /// <param name="seaLevel">The same at sea level.</param>
    public static bool IsKnownApart(Measure measure, LeaveningComparison here, LeaveningComparison seaLevel)
    {
        ArgumentNullException.ThrowIfNull(here);
        ArgumentNullException.ThrowIfNull(seaLevel);
        return measure is not (Measure.Height or Measure.Diameter)
            || here.PerPiece.Held.Limit != RiseLimit.Walls
            || seaLevel.PerPiece.Held.Limit != RiseLimit.Walls;
    }

    private static double DoneBelow(LessonFormula bread) =>
        bread
            .Formula.Lines.Where(line => (line.Ingredient.StarterOf ?? line.Ingredient).Allergens.Any(allergen => allergen.Name == "rye"))
            .Sum(line => PerHundred.Share(line.Percent * line.Ingredient.FlourShare)) > MostlyRye
            ? RyeDoneBelowBoiling
            : DoneBelowBoiling;

    private static string LossOf(LessonFormula formula, GasHolding holding)
    {
        var whose = $"{holding.Name}: {holding.LossSource}";
        return formula.IsOvenBread ? "the loss in baking of a " + whose : "the loss in cooking of a " + whose;
    }

    /// <summary>A band of something that grows with what was filled in.</summary>
    private static Band<double> Filled(Band<double> band) =>
        new(band.Low * (1 - FillingError), band.Typical, band.High * (1 + FillingError));

    /// <summary>How much gas is held and how a piece spreads have nothing to do with each other: their shares of doubt add up as the root
    /// of their squares, or the sheet would accept what no bread is (JCGM 100:2008, Guide to the expression of uncertainty in measurement,
    /// 5.1.2).</summary>
    private static Band<double> Shaped(Band<double> band, BakingShape shape) =>
        new(
            band.Typical - band.Typical * Both(1 - band.Low / band.Typical, shape.ShapeError),
            band.Typical,
            band.Typical + band.Typical * Both(band.High / band.Typical - 1, shape.ShapeError)
        );

    private static double Both(double one, double other) => Math.Sqrt(one * one + other * other);

    /// <summary>With gas, as uncertain as the model has it, in a portion as uncertain as it is filled.</summary>
    private static Band<Volume> Baked(GasBudget piece)
    {
        var baked = piece.Held.Baked.Map(gas => piece.GasFreeVolume + gas);
        return new(baked.Low * (1 - FillingError), baked.Typical, baked.High * (1 + FillingError));
    }

    /// <summary>The larger loss leaves less.</summary>
    private static Band<double> After(double grams, Band<double> loss) =>
        new(grams * (1 - loss.High), grams * (1 - loss.Typical), grams * (1 - loss.Low));
}
