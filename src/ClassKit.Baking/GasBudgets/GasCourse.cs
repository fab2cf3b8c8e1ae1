using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.GasBudgets;

/// <summary>
/// The gas over a recipe's own time: minute by minute, by typical times; all that is made, and what the dough can be expected to hold.
/// </summary>
internal sealed class GasCourse
{
    private const double StepMinutes = 1;

    private readonly DoughBake _bake;
    private readonly IReadOnlyList<GasSource> _sources;
    private readonly SteamSupply? _steam;
    private readonly WarmingCurve? _curve;

    private readonly List<GasPoint> _points = [];
    private double _minute;
    private Band<double> _yeastGas;
    private Band<double> _made;

    public GasCourse(DoughBake bake, IReadOnlyList<GasSource> sources, SteamSupply? steam)
    {
        _bake = bake;
        _sources = sources;
        _steam = steam;
        _curve = Curve();
    }

    /// <summary>
    /// The minute at which the dough is full on the bench, by typical values, and stays so up to the oven; null if it is not.
    /// </summary>
    public double? OverproofedAfter { get; private set; }

    /// <summary>True if the walls, by typical values, were stretched to their limit in the oven.</summary>
    public bool WallsGaveWay { get; private set; }

    private bool IsShell => _bake.Formula.Leavening == Leavening.Steam && _bake.Holding.IsHollow;

    /// <summary>What yeast adds between the oven's door and its death, in moles.</summary>
    public Band<double> YeastInOven()
    {
        var sum = default(Band<double>);
        if (_curve is null)
            return sum;
        var dough = _bake.Stood;
        foreach (var (stage, step) in Steps(inOven: true))
        {
            var half = _curve.After(dough, step / 2, stage.Temperature);
            sum = sum.With(_bake.Settings.Yeast.MolesPerMinute(_bake.YeastSolids, half, _bake.SugarPercent), (total, rate) =>
                total + rate * step
            );
            dough = _curve.After(dough, step, stage.Temperature);
        }
        return sum;
    }

    public IReadOnlyList<GasPoint> Points()
    {
        var air = Air;
        Band<GasRetention> kept = new(
            Kept(air.Low, _bake.Holding.Share.Low),
            Kept(air.Typical, _bake.Holding.Share.Typical),
            Kept(air.High, _bake.Holding.Share.High)
        );
        OnBench(kept);
        if (_curve is not null)
            InOven(kept, _curve);
        return _points;

        GasRetention Kept(AmountOfSubstance beatenIn, double share) => new(beatenIn, _bake.Water, _bake.Pressure, share);
    }

    private void OnBench(Band<GasRetention> kept)
    {
        var lag = _bake.Settings.Yeast.LagMinutes;
        var atOnce = Sum(source => IsChemical(source) ? source.BenchAmount.Map(gas => gas.Moles) : default);
        Make(kept, atOnce);
        Add(
            _bake.Stages.Count > 0 ? _bake.Stages[0].Name : "",
            false,
            _bake.Bench,
            Bubbles(_made, _bake.Bench),
            Held(kept, _bake.Bench, _bake.Holding.BenchLimit),
            default,
            false
        );

        BakeStage? before = null;
        var begun = 0.0;
        foreach (var (stage, step) in Steps(inOven: false))
        {
            if (stage != before)
                begun = _minute;
            if (stage.Degasses && stage != before)
            {
                _ = kept.Map(one => Degassed(one, stage.Temperature));
                OverproofedAfter = null;
            }
            before = stage;
            _minute += step;
            var active = Math.Max(0, step - lag);
            lag = Math.Max(0, lag - step);
            var dough = stage.At(_minute - begun);
            Ferment(stage.Temperature, active);
            Make(kept, Plus(atOnce, _yeastGas));
            var held = Held(kept, dough, _bake.Holding.BenchLimit);
            if (kept.Typical.IsFull)
                OverproofedAfter ??= _minute;
            Add(stage.Name, false, dough, Bubbles(_made, dough), held, default, false);
        }

        static GasRetention Degassed(GasRetention one, Temperature dough)
        {
            one.Degas(dough);
            return one;
        }
    }

    private void InOven(Band<GasRetention> kept, WarmingCurve curve)
    {
        var dough = _bake.Stood;
        var steam = 0.0;
        foreach (var (stage, step) in Steps(inOven: true))
        {
            _minute += step;
            if (_points[^1].IsSet)
            {
                dough = curve.After(dough, step, stage.Temperature);
                _points.Add(_points[^1] with { Minute = _minute, Stage = stage.Name, Dough = dough });
                continue;
            }
            Ferment(curve.After(dough, step / 2, stage.Temperature), step);
            dough = curve.After(dough, step, stage.Temperature);
            var warm = dough;
            Make(kept, Plus(Sum(source => IsChemical(source) ? Released(source, warm) : default), _yeastGas));
            if (IsShell)
                Shell(kept, stage, dough, step, ref steam);
            else
                Crumb(kept, stage, dough);
        }
    }

    /// <summary>A crumb sets at one temperature, and its bubbles with it.</summary>
    private void Crumb(Band<GasRetention> kept, BakeStage stage, Temperature dough)
    {
        var set = _bake.Settings.SetTemperature.Typical;
        var isSet = dough.Celsius >= set.Celsius;
        var at = isSet ? set : dough;
        // What is full at the oven's door stays full only until the walls, warm and soft, stretch again.
        var held = Held(kept, at, _bake.Holding.OvenLimit);
        WallsGaveWay = held.Typical.Litres >= Room(_bake.Holding.OvenLimit.Typical).Litres * (1 - 1e-9);
        Add(stage.Name, true, dough, Bubbles(_made, at), held, default, isSet, at);
    }

    /// <summary>A shell's skin goes on stretching until the hollow is as large as its limit; its bubbles grow up to the boil.</summary>
    private void Shell(Band<GasRetention> kept, BakeStage stage, Temperature dough, double step, ref double steam)
    {
        var boiling = _steam!.BoilingPoint;
        var at = dough.Celsius < _bake.Settings.SetTemperature.High.Celsius ? dough : _bake.Settings.SetTemperature.High;
        var bubbles = Bubbles(_made, at);
        var held = Held(kept, at, _bake.Holding.OvenLimit);
        if (dough.Celsius < boiling.Celsius)
        {
            Add(stage.Name, true, dough, bubbles, held, default, false, at);
            return;
        }
        steam += _curve!.GramsBoiledPerMinute(_bake.Dough, DoughWater.MoistureShare(_bake.Formula), stage.Temperature) * step;
        var hollow = SteamPocket.Boiled(Mass.FromGrams(steam), _bake.Pressure);
        var inside = held.With(_bake.Holding.OvenLimit, (small, limit) => Least(hollow, Room(limit) - small));
        WallsGaveWay = inside.Typical < hollow;
        Add(
            stage.Name,
            true,
            dough,
            bubbles.With(inside, (small, large) => small + large),
            held.With(inside, (small, large) => small + large),
            inside,
            inside.High < hollow,
            at
        );
    }

    /// <summary>The limit as room for gas.</summary>
    private Volume Room(double times) => _bake.GasFree * Math.Max(0, times - 1);

    private Band<Volume> Held(Band<GasRetention> kept, Temperature dough, Band<double> limit) =>
        kept.With(limit, (one, times) => one.VolumeAt(dough, Room(times)));

    private void Ferment(Temperature at, double minutes) =>
        _yeastGas = _yeastGas
            .With(_bake.Settings.Yeast.MolesPerMinute(_bake.YeastSolids, at, _bake.SugarPercent), (total, rate) => total + rate * minutes)
            .With(Fermentation.SugarLimitMoles(_bake.Formula, _bake.Dough), Math.Min);

    /// <summary>Brings what has been made up to a total, and hands the difference to what keeps it.</summary>
    private void Make(Band<GasRetention> kept, Band<double> total)
    {
        kept.Low.Add(total.Low - _made.Low);
        kept.Typical.Add(total.Typical - _made.Typical);
        kept.High.Add(total.High - _made.High);
        _made = total;
    }

    private void Add(
        string stage,
        bool inOven,
        Temperature dough,
        Band<Volume> gas,
        Band<Volume> held,
        Band<Volume> hollow,
        bool isSet,
        Temperature? bubblesAt = null
    ) =>
        _points.Add(
            new(
                _minute,
                stage,
                inOven,
                dough,
                gas,
                Within(held, gas),
                Shares(gas.Typical - hollow.Typical, hollow.Typical, bubblesAt ?? dough),
                isSet
            )
            {
                Steam = hollow,
            }
        );

    /// <summary>
    /// No dough holds more than was made: an end of the band is cut off where leak and limit are assumed kinder than the gas.
    /// </summary>
    private static Band<Volume> Within(Band<Volume> held, Band<Volume> made) => held.With(made, Least);

    private static Volume Least(Volume one, Volume other) => one < other ? one : other;

    /// <summary>
    /// Bubbles hold one mixture, so each mechanism has its share of their volume; the water takes from all carbon dioxide alike.
    /// </summary>
    private List<GasShare> Shares(Volume bubbles, Volume hollow, Temperature dough)
    {
        var airVolume = GasCell.PerMole(dough, _bake.Pressure) * Air.Typical.Moles;
        var carbonDioxide = bubbles - airVolume;
        var shares = _sources
            .Select(source => new GasShare(
                source.Kind,
                source.Kind switch
                {
                    GasSourceKind.Air => airVolume,
                    GasSourceKind.Yeast => Part(_yeastGas.Typical),
                    _ => Part(
                        _points.Count > 0 && _curve is not null && _minute > BenchMinutes
                            ? Released(source, dough).Typical
                            : source.BenchAmount.Typical.Moles
                    ),
                }
            ))
            .ToList();
        if (hollow.Litres > 0)
            shares.Add(new(GasSourceKind.Steam, hollow));
        return shares;

        Volume Part(double moles) => _made.Typical > 0 ? carbonDioxide * (moles / _made.Typical) : default;
    }

    private double BenchMinutes => _bake.Stages.Where(stage => !stage.InOven).Sum(stage => stage.Minutes.Typical);

    private static bool IsChemical(GasSource source) =>
        source.Kind is GasSourceKind.Soda or GasSourceKind.BakingPowder or GasSourceKind.Ammonia;

    /// <summary>
    /// Double-acting powder gives the rest of its gas evenly from the bench to the setting of the crumb: a simplification.
    /// </summary>
    private Band<double> Released(GasSource source, Temperature dough)
    {
        var span = _bake.Settings.SetTemperature.Typical.Celsius - _bake.Stood.Celsius;
        var way = span <= 0 ? 1 : Math.Clamp((dough.Celsius - _bake.Stood.Celsius) / span, 0, 1);
        return source.BenchAmount.With(source.SetAmount, (bench, all) => bench.Moles + (all.Moles - bench.Moles) * way);
    }

    private IEnumerable<(BakeStage Stage, double Minutes)> Steps(bool inOven)
    {
        foreach (var stage in _bake.Stages.Where(stage => stage.InOven == inOven))
            for (var within = 0.0; within < stage.Minutes.Typical; within += StepMinutes)
                yield return (stage, Math.Min(StepMinutes, stage.Minutes.Typical - within));
    }

    private WarmingCurve? Curve()
    {
        if (_bake.Stages.FirstOrDefault(stage => stage.InOven) is not { } first || first.Minutes.Typical <= 0)
            return null;
        var boiling = Saturation.BoilingPoint(_bake.Pressure);
        // What is done is set.
        var done = Temperature.FromCelsius(
            Math.Max(_bake.Settings.DoneTemperature.Celsius, _bake.Settings.SetTemperature.Typical.Celsius + 1)
        );
        if (_bake.Stages.Any(stage => stage.InOven && stage.Way != CookingWay.Oven))
            return Moist(boiling, done);
        if (first.Temperature.Celsius <= Math.Max(boiling.Celsius, done.Celsius) || _bake.Stood.Celsius >= boiling.Celsius)
            return null;
        return IsShell
            ? WarmingCurve.Through(
                _bake.Stood,
                boiling,
                first.Minutes.Typical * _bake.Settings.BoilAtShareOfFirstBake,
                first.Temperature,
                boiling
            )
            : WarmingCurve.Through(
                _bake.Stood,
                done,
                [.. _bake.Stages.Where(stage => stage.InOven).Select(stage => (stage.Minutes.Typical, stage.Temperature))],
                boiling
            );
    }

    /// <summary>
    /// Where steam, water, fat or a hot plate heats: at their mean over the time in the heat, which may be no hotter than the boiling
    /// point, and done at the end of it.
    /// </summary>
    private WarmingCurve? Moist(Temperature boiling, Temperature done)
    {
        BakeStage[] hot = [.. _bake.Stages.Where(stage => stage.InOven)];
        var minutes = hot.Sum(stage => stage.Minutes.Typical);
        var around = hot.Sum(stage => stage.Temperature.Celsius * stage.Minutes.Typical) / minutes;
        var reached = Math.Min(done.Celsius, Math.Min(around, boiling.Celsius) - 1);
        return _bake.Stood.Celsius < reached
            ? WarmingCurve.Through(_bake.Stood, Temperature.FromCelsius(reached), minutes, Temperature.FromCelsius(around), boiling)
            : null;
    }

    private Band<double> Sum(Func<GasSource, Band<double>> moles) =>
        _sources.Aggregate(default(Band<double>), (sum, source) => Plus(sum, moles(source)));

    private static Band<double> Plus(Band<double> left, Band<double> right) => left.With(right, (one, other) => one + other);

    private Band<AmountOfSubstance> Air => _sources.Single(source => source.Kind == GasSourceKind.Air).BenchAmount;

    /// <summary>Air and the carbon dioxide that the water does not hold, with their vapour.</summary>
    private Band<Volume> Bubbles(Band<double> carbonDioxide, Temperature dough) => carbonDioxide.With(Air, (made, rest) =>
        {
            var full = DissolvedCarbonDioxide.In(_bake.Water, dough, GasCell.DryPressure(dough, _bake.Pressure)).Moles;
            return GasCell.PerMole(dough, _bake.Pressure) * (DissolvedCarbonDioxide.MolesInBubbles(made, rest.Moles, full) + rest.Moles);
        });
}
