using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.GasBudgets;

/// <summary>Works a gas budget out. Everything that could be impossible has been asked before.</summary>
internal sealed class GasBudgeting(DoughBake bake)
{
    private readonly Temperature _boiling = Saturation.BoilingPoint(bake.Pressure);

    public GasBudget Budget(Band<double> expansion)
    {
        var leavening = new ChemicalSupply(bake.Formula, bake.Dough, bake.Settings);
        List<GasMade> made = [Air()];
        if (bake.YeastSolids.Grams > 0)
            made.Add(Yeast());
        if (leavening.HasSoda)
            made.Add(new(GasSourceKind.Soda, leavening.SodaGas, leavening.SodaGas, leavening.ExplainSoda()));
        if (leavening.HasPowder)
            made.Add(new(GasSourceKind.BakingPowder, leavening.PowderBenchGas, leavening.PowderGas, leavening.ExplainPowder()));
        if (leavening.HasAmmonia)
            made.Add(new(GasSourceKind.Ammonia, default, leavening.AmmoniaGas, leavening.ExplainAmmonia()));

        var sources = InBubbles(made);
        var supply = Steam();
        var course = new GasCourse(bake, sources, supply);
        var points = course.Points();
        return new(
            bake.Formula,
            bake.Dough,
            bake.Pressure,
            bake.Bench,
            bake.GasFree,
            sources,
            supply,
            expansion,
            points,
            leavening.SodaLeft,
            Held(course, points)
        )
        {
            Way = bake.Way,
            SteamFate = SteamFate.Of(bake.Dough, bake.Holding, points[^1], bake.Pressure),
        };
    }

    private GasMade Air()
    {
        // The share is of the mixed dough, and the air in it is wet already.
        var air = bake.Settings.AirShare.Map(share => DryGasIn(bake.GasFree * (share / (1 - share)), bake.Bench));
        var typical = bake.Settings.AirShare.Typical;
        return new(
            GasSourceKind.Air,
            air,
            air,
            new(
                "Air beaten in",
                [
                    new(
                        "gas-free dough",
                        "dough / its density without gas",
                        $"{Figures.Grams(bake.Dough)} / {Figures.Show(bake.Dough.Grams / bake.GasFree.Millilitres)} g/mL",
                        Figures.Millilitres(bake.GasFree)
                    ),
                    new(
                        "air",
                        "gas-free dough × share / (1 - share)",
                        $"{Figures.Millilitres(bake.GasFree)} × {Figures.Percent(typical)} / (1 - {Figures.Percent(typical)})",
                        $"{Figures.Show(bake.GasFree.Millilitres * typical / (1 - typical))} mL"
                    ),
                ],
                $"Air is assumed to be {Figures.Show(PerHundred.Of(bake.Settings.AirShare.Low))} % to {Figures.Show(PerHundred.Of(bake.Settings.AirShare.High))} % of the mixed dough."
            )
        );
    }

    private GasMade Yeast()
    {
        var model = bake.Settings.Yeast;
        var limit = Fermentation.SugarLimitMoles(bake.Formula, bake.Dough);
        var onBench = new Band<double>(
            Run(stage => stage.Low).Low,
            Run(stage => stage.Typical).Typical,
            Run(stage => stage.High).High
        ).With(limit, Math.Min);
        var inOven = new GasCourse(bake, [], null).YeastInOven();
        var byThen = onBench.With(inOven, (bench, oven) => bench + oven).With(limit, Math.Min);
        var solids = bake.YeastSolids.Grams;
        return new(
            GasSourceKind.Yeast,
            onBench.Map(AmountOfSubstance.FromMoles),
            byThen.Map(AmountOfSubstance.FromMoles),
            new(
                "Carbon dioxide from yeast",
                [
                    new(
                        "yeast solids",
                        "dough × share of yeast solids",
                        $"{Figures.Grams(bake.Dough)} × {Figures.Percent(bake.YeastSolids / bake.Dough)}",
                        Figures.Grams(bake.YeastSolids)
                    ),
                    .. BenchSteps(solids),
                    new(
                        "by the time the crumb sets",
                        "bench + heat, no more than the sugar allows",
                        $"the lesser of ({Millimoles(onBench.Typical)} + {Millimoles(inOven.Typical)}) and {Millimoles(limit.Typical)}",
                        Millimoles(byThen.Typical)
                    ),
                ],
                $"The rate is known only as a range, {Figures.Show(model.MillimolesPerHour.Low)} to {Figures.Show(model.MillimolesPerHour.High)} mmol per hour and gram of yeast solids at 30 °C; low and high also take the shortest and the longest times of the method."
            )
        );

        IEnumerable<ExplainedStep> BenchSteps(double solids)
        {
            List<string> parts = [];
            var lag = model.LagMinutes;
            foreach (var stage in bake.Stages.Where(stage => !stage.InOven))
            {
                var active = Math.Max(0, stage.Minutes.Typical - lag);
                lag = Math.Max(0, lag - stage.Minutes.Typical);
                var perHour = model.MolesPerMinute(bake.YeastSolids, stage.Temperature, bake.SugarPercent).Typical * 60 / solids * 1000;
                var moles = perHour / 60 / 1000 * solids * active;
                parts.Add(Millimoles(moles));
                yield return new(
                    $"{stage.Name}, at {Figures.Celsius(stage.Temperature)}",
                    "rate × solids × active time",
                    $"{Figures.Show(perHour)} mmol/(h g) × {Figures.Grams(bake.YeastSolids)} × {Figures.Show(active)} min",
                    Millimoles(moles)
                );
            }
            yield return new(
                "on the bench",
                "their sum, no more than the sugar allows",
                parts.Count > 0 ? $"the lesser of ({string.Join(" + ", parts)}) and {Millimoles(limit.Typical)}" : "",
                Millimoles(onBench.Typical)
            );
        }

        static string Millimoles(double moles) => Figures.Millimoles(AmountOfSubstance.FromMoles(moles));

        Band<double> Run(Func<Band<double>, double> pick)
        {
            var (low, typical, high) = (0.0, 0.0, 0.0);
            var lag = model.LagMinutes;
            foreach (var stage in bake.Stages.Where(stage => !stage.InOven))
            {
                var total = pick(stage.Minutes);
                var active = Math.Max(0, total - lag);
                lag = Math.Max(0, lag - total);
                var perMinute = model.MolesPerMinute(bake.YeastSolids, stage.Temperature, bake.SugarPercent);
                low += perMinute.Low * active;
                typical += perMinute.Typical * active;
                high += perMinute.High * active;
            }
            return new(low, typical, high);
        }
    }

    private SteamSupply Steam()
    {
        var water = bake.Water;
        var perPercent = SteamPocket.Boiled(water * 0.01, bake.Pressure);
        var rise = bake.GasFree * (bake.Settings.Rise - 1);
        var needed = SteamPocket.Filling(rise, bake.Pressure);
        var perGram = Saturation.VapourLitresPerGram(_boiling);
        return new(
            _boiling,
            water,
            perPercent,
            rise,
            needed,
            needed / water,
            new(
                "Steam",
                [
                    ExplainedStep.Given(
                        "boiling point",
                        $"saturation temperature under {Figures.Hectopascals(bake.Pressure)}, IAPWS-IF97",
                        Figures.Celsius(_boiling)
                    ),
                    new(
                        "all the water",
                        "dough × its moisture",
                        $"{Figures.Grams(bake.Dough)} × {Figures.Percent(water / bake.Dough)}",
                        Figures.Grams(water)
                    ),
                    new(
                        "the rise",
                        "gas-free dough × (times - 1)",
                        $"{Figures.Millilitres(bake.GasFree)} × ({Figures.Show(bake.Settings.Rise)} - 1)",
                        Figures.Millilitres(rise)
                    ),
                    new(
                        "water to fill it",
                        $"rise / volume of a gram of steam, at {Figures.Celsius(_boiling)} and {Figures.Hectopascals(bake.Pressure)}",
                        $"{Figures.Millilitres(rise)} / {Figures.Show(perGram)} L/g",
                        Figures.Grams(needed)
                    ),
                    new(
                        "share of all the water",
                        "water to fill it / all the water",
                        $"{Figures.Grams(needed)} / {Figures.Grams(water)}",
                        Figures.Percent(needed / water)
                    ),
                ],
                $"Steam at the boiling point by IAPWS-IF97; the rise to {Figures.Show(bake.Settings.Rise)} times the gas-free volume is a yardstick, not a forecast."
            )
        );
    }

    private HeldGas Held(GasCourse course, IReadOnlyList<GasPoint> points)
    {
        var holding = bake.Holding;
        var door = points.Last(point => !point.InOven);
        var end = points[^1];
        var limit = end.InOven ? holding.OvenLimit : holding.BenchLimit;
        var specific = end.Held.With(holding.MassLoss, (gas, loss) => (bake.GasFree + gas).Millilitres / (bake.Dough.Grams * (1 - loss)));
        return new(
            holding,
            door.Held,
            end.Held,
            Share(door),
            Share(end),
            course.OverproofedAfter,
            course.WallsGaveWay || (!end.InOven && course.OverproofedAfter is not null) ? RiseLimit.Walls : RiseLimit.Gas,
            specific,
            new(
                "Gas held",
                [
                    ExplainedStep.Given(
                        "gas made",
                        "all sources by the end of the course, if none escaped; of steam only what the skin holds",
                        Figures.Millilitres(end.Gas.Typical)
                    ),
                    new(
                        "room for gas",
                        "gas-free dough × (limit - 1)",
                        $"{Figures.Millilitres(bake.GasFree)} × ({Figures.Show(limit.Typical)} - 1)",
                        Figures.Millilitres(bake.GasFree * (limit.Typical - 1))
                    ),
                    ExplainedStep.Given(
                        "gas held",
                        "minute by minute: new gas less what leaks, at most the room",
                        Figures.Millilitres(end.Held.Typical)
                    ),
                    new(
                        "share held",
                        "gas held / gas made",
                        $"{Figures.Millilitres(end.Held.Typical)} / {Figures.Millilitres(end.Gas.Typical)}",
                        Figures.Percent(end.Held.Typical / end.Gas.Typical)
                    ),
                    new(
                        "volume",
                        "gas-free dough + gas held",
                        $"{Figures.Millilitres(bake.GasFree)} + {Figures.Millilitres(end.Held.Typical)}",
                        Figures.Millilitres(bake.GasFree + end.Held.Typical)
                    ),
                    new(
                        "baked mass",
                        "dough × (1 - loss in the oven)",
                        $"{Figures.Grams(bake.Dough)} × (1 - {Figures.Percent(holding.MassLoss.Typical)})",
                        Figures.Grams(bake.Dough * (1 - holding.MassLoss.Typical))
                    ),
                    new(
                        "specific volume",
                        "volume / baked mass",
                        $"{Figures.Millilitres(bake.GasFree + end.Held.Typical)} / {Figures.Grams(bake.Dough * (1 - holding.MassLoss.Typical))}",
                        $"{Figures.Show(specific.Typical)} mL/g"
                    ),
                ],
                $"Held as by a {holding.Name}: {Figures.Percent(holding.Share.Low)} to {Figures.Percent(holding.Share.High)} of new gas stays, up to {Figures.Show(limit.Low)} to {Figures.Show(limit.High)} times the gas-free volume. Source: {holding.Source}."
            )
        );

        // Of steam only what is held is counted as made: the rest of it blows off for as long as there is water.
        static double? Share(GasPoint point) =>
            point.Gas.Typical.Litres > 0 && point.Shares.All(share => share.Kind != GasSourceKind.Steam)
                ? point.Held.Typical / point.Gas.Typical
                : null;
    }

    /// <summary>What of the gas is in bubbles: all carbon dioxide alike leaves a part of itself in the dough's water.</summary>
    private List<GasSource> InBubbles(IReadOnlyList<GasMade> made)
    {
        var air = Sum(made.Where(gas => gas.Kind == GasSourceKind.Air), gas => gas.Bench);
        var dissolving = made.Where(gas => gas.Kind != GasSourceKind.Air).ToList();
        var bench = Share(Sum(dissolving, gas => gas.Bench), new(bake.Stood, bake.Stood, bake.Stood));
        var set = Share(Sum(dissolving, gas => gas.Set), bake.Settings.SetTemperature);
        return [.. made.Select(gas => Source(gas, bench, set))];

        static Band<AmountOfSubstance> Sum(IEnumerable<GasMade> gases, Func<GasMade, Band<AmountOfSubstance>> of) =>
            gases.Aggregate(default(Band<AmountOfSubstance>), (sum, gas) => sum.With(of(gas), (left, right) => left + right));

        Band<double> Share(Band<AmountOfSubstance> made, Band<Temperature> at) =>
            made.With(air, (carbonDioxide, air) => (carbonDioxide, air))
                .With(at, (gas, temperature) =>
                    gas.carbonDioxide.Moles > 0
                        ? DissolvedCarbonDioxide.MolesInBubbles(gas.carbonDioxide.Moles, gas.air.Moles, Full(temperature))
                            / gas.carbonDioxide.Moles
                        : 1
                );
    }

    /// <summary>What the dough's water holds under pure carbon dioxide.</summary>
    private double Full(Temperature temperature) =>
        DissolvedCarbonDioxide.In(bake.Water, temperature, GasCell.DryPressure(temperature, bake.Pressure)).Moles;

    private GasSource Source(GasMade gas, Band<double> shareOnBench, Band<double> shareAtSet)
    {
        var isAir = gas.Kind == GasSourceKind.Air;
        var bench = isAir ? gas.Bench : gas.Bench.With(shareOnBench, (amount, share) => amount * share);
        var set = isAir ? gas.Set : gas.Set.With(shareAtSet, (amount, share) => amount * share);
        var onBench = bench.Map(amount => GasCell.PerMole(bake.Stood, bake.Pressure) * amount.Moles);
        var atSet = set.With(bake.Settings.SetTemperature, (amount, temperature) =>
            GasCell.PerMole(temperature, bake.Pressure) * amount.Moles
        );
        return new(
            gas.Kind,
            gas.Bench,
            gas.Set,
            onBench,
            atSet,
            gas.Explanation with
            {
                Steps =
                [
                    .. gas.Explanation.Steps,
                    .. isAir
                        ? []
                        : (ExplainedStep[])[InBubbles("in bubbles on the bench", gas.Bench.Typical, shareOnBench.Typical, bench.Typical)],
                    Wet("gas on the bench", bench.Typical, bake.Stood, onBench.Typical),
                    .. isAir
                        ? []
                        : (ExplainedStep[])[InBubbles("in bubbles when the crumb sets", gas.Set.Typical, shareAtSet.Typical, set.Typical)],
                    Wet("gas when the crumb sets", set.Typical, bake.Settings.SetTemperature.Typical, atSet.Typical),
                ],
            }
        );
    }

    private static ExplainedStep InBubbles(string quantity, AmountOfSubstance made, double share, AmountOfSubstance gas) =>
        new(
            quantity,
            "carbon dioxide made × share that the water does not hold",
            $"{Figures.Millimoles(made)} × {Figures.Percent(share)}",
            Figures.Millimoles(gas)
        );

    /// <summary>The step from an amount of dry gas to the room that it takes with its vapour.</summary>
    private ExplainedStep Wet(string quantity, AmountOfSubstance gas, Temperature temperature, Volume volume) =>
        new(
            quantity,
            "n R T / (pressure - vapour pressure)",
            $"{Figures.Millimoles(gas)} × R × {Figures.Kelvin(temperature)} / ({Figures.Pascals(bake.Pressure)} - {Figures.Pascals(Saturation.PressureAt(temperature))})",
            Figures.Millilitres(volume)
        );

    private AmountOfSubstance DryGasIn(Volume wet, Temperature temperature) =>
        AmountOfSubstance.FromMoles(wet / GasCell.PerMole(temperature, bake.Pressure));
}
