namespace ClassKit.Baking;

/// <summary>The gas over a recipe's own time: minute by minute, by typical times, if none escapes.</summary>
internal sealed class GasCourse
{
    private const double StepMinutes = 1;

    private readonly BakersFormula _formula;
    private readonly Mass _dough;
    private readonly IReadOnlyList<BakeStage> _stages;
    private readonly Temperature _bench;
    private readonly Pressure _pressure;
    private readonly GasBudgetSettings _settings;
    private readonly IReadOnlyList<GasSource> _sources;
    private readonly SteamSupply? _steam;
    private readonly WarmingCurve? _curve;
    private readonly Mass _yeast;
    private readonly double _sugar;
    private readonly Mass _water;

    /// <summary>The dough as it goes into the oven.</summary>
    private readonly Temperature _door;

    public GasCourse(
        BakersFormula formula,
        Mass dough,
        IReadOnlyList<BakeStage> stages,
        Temperature bench,
        Pressure pressure,
        GasBudgetSettings settings,
        IReadOnlyList<GasSource> sources,
        SteamSupply? steam)
    {
        _formula = formula;
        _dough = dough;
        _stages = stages;
        _bench = bench;
        _pressure = pressure;
        _settings = settings;
        _sources = sources;
        _steam = steam;
        _yeast = GasBudgeting.YeastIn(formula, dough);
        _sugar = GasBudgeting.SugarPercent(formula);
        _water = DoughWater.In(formula, dough);
        _door = stages.LastOrDefault(stage => !stage.InOven)?.Temperature ?? bench;
        _curve = Curve();
    }

    private bool IsShell => _formula.Leavening == Leavening.Steam;

    /// <summary>What yeast adds between the oven's door and its death, in moles.</summary>
    public Band<double> YeastInOven()
    {
        var sum = default(Band<double>);
        if (_curve is null)
            return sum;
        var dough = _door;
        foreach (var stage in _stages.Where(stage => stage.InOven))
        {
            for (var within = 0.0; within < stage.Minutes.Typical; within += StepMinutes)
            {
                var step = Math.Min(StepMinutes, stage.Minutes.Typical - within);
                var half = _curve.After(dough, step / 2, stage.Temperature);
                sum = sum.With(_settings.Yeast.MolesPerMinute(_yeast, half, _sugar), (total, rate) => total + rate * step);
                dough = _curve.After(dough, step, stage.Temperature);
            }
        }
        return sum;
    }

    public IReadOnlyList<GasPoint> Points()
    {
        List<GasPoint> points = [];
        var minute = 0.0;
        var lag = _settings.Yeast.LagMinutes;
        var yeast = default(Band<double>);
        var sugarLimit = Fermentation.SugarLimitMoles(_formula, _dough);
        var atOnce = Sum(source => source.Kind is GasSourceKind.Soda or GasSourceKind.BakingPowder ? source.BenchAmount.Map(gas => gas.Moles) : default);
        points.Add(new(0, _stages.Count > 0 ? _stages[0].Name : "", false, _bench, Bubbles(atOnce, _bench), false));

        foreach (var stage in _stages.Where(stage => !stage.InOven))
        {
            for (var within = 0.0; within < stage.Minutes.Typical; within += StepMinutes)
            {
                var step = Math.Min(StepMinutes, stage.Minutes.Typical - within);
                minute += step;
                var active = Math.Max(0, step - lag);
                lag = Math.Max(0, lag - step);
                yeast = Add(yeast, stage.Temperature, active);
                points.Add(new(minute, stage.Name, false, stage.Temperature, Bubbles(Plus(atOnce, yeast), stage.Temperature), false));
            }
        }
        if (_curve is null)
            return points;

        var dough = _door;
        var steam = 0.0;
        Band<Volume>? held = null;
        foreach (var stage in _stages.Where(stage => stage.InOven))
        {
            for (var within = 0.0; within < stage.Minutes.Typical; within += StepMinutes)
            {
                var step = Math.Min(StepMinutes, stage.Minutes.Typical - within);
                minute += step;
                yeast = Add(yeast, _curve.After(dough, step / 2, stage.Temperature), step);
                dough = _curve.After(dough, step, stage.Temperature);
                if (held is null)
                {
                    var (gas, set) = InOven(stage, dough, step, yeast, ref steam);
                    points.Add(new(minute, stage.Name, true, dough, gas, set));
                    if (set)
                        held = gas;
                }
                else
                {
                    points.Add(new(minute, stage.Name, true, dough, held.Value, true));
                }
            }
        }
        return points;

        Band<double> Add(Band<double> moles, Temperature at, double minutes) => moles
            .With(_settings.Yeast.MolesPerMinute(_yeast, at, _sugar), (total, rate) => total + rate * minutes)
            .With(sugarLimit, Math.Min);
    }

    /// <summary>The gas at one moment in the oven, and whether the walls are set by then.</summary>
    private (Band<Volume> Gas, bool IsSet) InOven(BakeStage stage, Temperature dough, double step, Band<double> yeast, ref double steam)
    {
        var made = Plus(Sum(source => source.Kind is GasSourceKind.Soda or GasSourceKind.BakingPowder ? Released(source, dough) : default), yeast);
        if (!IsShell)
        {
            var at = dough.Celsius < _settings.SetTemperature.Typical.Celsius ? dough : _settings.SetTemperature.Typical;
            return (Bubbles(made, at), dough.Celsius >= _settings.SetTemperature.Typical.Celsius);
        }

        // A shell's skin goes on stretching until the hollow is as large as the yardstick allows; its bubbles grow up to the boil.
        var boiling = _steam!.BoilingPoint;
        var bubbles = Bubbles(made, dough.Celsius < _settings.SetTemperature.High.Celsius ? dough : _settings.SetTemperature.High);
        if (dough.Celsius < boiling.Celsius)
            return (bubbles, false);
        steam += _curve!.GramsBoiledPerMinute(_dough, DoughWater.MoistureShare(_formula), stage.Temperature) * step;
        var hollow = SteamPocket.SteamFrom(Mass.FromGrams(steam), _pressure);
        var held = hollow < _steam.Rise ? hollow : _steam.Rise;
        return (bubbles.Map(volume => volume + held), hollow >= _steam.Rise);
    }

    /// <summary>Double-acting powder gives the rest of its gas evenly from the bench to the setting of the crumb: a simplification.</summary>
    private Band<double> Released(GasSource source, Temperature dough)
    {
        var span = _settings.SetTemperature.Typical.Celsius - _door.Celsius;
        var way = span <= 0 ? 1 : Math.Clamp((dough.Celsius - _door.Celsius) / span, 0, 1);
        return source.BenchAmount.With(source.SetAmount, (bench, all) => bench.Moles + (all.Moles - bench.Moles) * way);
    }

    private WarmingCurve? Curve()
    {
        if (_stages.FirstOrDefault(stage => stage.InOven) is not { } first || first.Minutes.Typical <= 0)
            return null;
        var boiling = Saturation.BoilingPoint(_pressure);
        if (first.Temperature.Celsius <= Math.Max(boiling.Celsius, _settings.DoneTemperature.Celsius) || _door.Celsius >= boiling.Celsius)
            return null;
        return IsShell
            ? WarmingCurve.Through(_door, boiling, first.Minutes.Typical * _settings.BoilAtShareOfFirstBake, first.Temperature, boiling)
            : WarmingCurve.Through(_door, _settings.DoneTemperature, _stages.Where(stage => stage.InOven).Sum(stage => stage.Minutes.Typical), first.Temperature, boiling);
    }

    private Band<double> Sum(Func<GasSource, Band<double>> moles) => _sources.Aggregate(default(Band<double>), (sum, source) => Plus(sum, moles(source)));

    private static Band<double> Plus(Band<double> left, Band<double> right) => left.With(right, (one, other) => one + other);

    /// <summary>Air and the carbon dioxide that the water does not hold, with their vapour.</summary>
    private Band<Volume> Bubbles(Band<double> carbonDioxide, Temperature dough)
    {
        var air = _sources.Single(source => source.Kind == GasSourceKind.Air).BenchAmount;
        return carbonDioxide.With(air, (made, rest) =>
        {
            var gas = DissolvedCarbonDioxide.InBubbles(AmountOfSubstance.FromMoles(made), rest, _water, dough, _pressure).Value;
            return GasCell.VolumeOf(gas + rest, dough, _pressure).Value;
        });
    }
}
