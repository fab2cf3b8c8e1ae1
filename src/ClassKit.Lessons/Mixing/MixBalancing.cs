using ClassKit.Baking.Explanations;
using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Mixing;

/// <summary>Works a <see cref="MixBalance"/> out.</summary>
internal sealed class MixBalancing
{
    private readonly LessonFormula _formula;
    private readonly Temperature _kitchen;
    private readonly MixSettings _settings;
    private readonly ILookup<string, IngredientHeat> _heats;
    private readonly bool _isWaterDrawn;

    public MixBalancing(LessonFormula formula, Temperature kitchen, MixSettings settings)
    {
        (_formula, _kitchen, _settings) = (formula with { Formula = formula.Dried }, kitchen, settings);
        _isWaterDrawn = TapWater.IsDrawnFor(formula);
        _heats = formula
            .Steps.SelectMany(step => step.Work.Heats)
            // Of water that is boiled and stands, and that the mix asks for besides, nobody said how much: all of it is drawn.
            .Where(heat => heat.IsOfAPart || !_isWaterDrawn || !TapWater.Is(heat.Ingredient))
            .Select(heat => Scald.HasStood(formula, heat) ? heat with { Kind = HeatKind.AsStored } : heat)
            .ToLookup(heat => heat.Ingredient.Id);
    }

    public Computed<MixBalance> Balance()
    {
        if (!WarmedTo().TryGet(out var warmed, out var why))
            return why;
        var parts = Parts(warmed);
        if (!Mixed(parts, _settings.Bowl.Typical).TryGet(out var mixed, out why))
            return why;
        var balance = new MixBalance(parts, Band(parts, mixed));
        return balance with
        {
            SetsFat =
                mixed.Celsius < _settings.MeltingFrom.Celsius
                && parts.Any(part => IsMeltingFat(part) && part.Kind is HeatKind.Melted or HeatKind.Warmed),
            CoolsMeltedFat =
                warmed.Celsius < _settings.MeltedThrough.Celsius && parts.Any(part => IsMeltingFat(part) && part.Kind == HeatKind.Warmed),
            OutOfReach = _formula.MixTemperature is { } asked && !balance.Allows(asked) ? TooFar(asked, balance) : null,
        };
    }

    /// <summary>To the whole degree, as a probe shows it, and neither colder than the refrigerator nor hotter than allowed.</summary>
    private Computed<Temperature> WarmedTo()
    {
        var (coldest, warmest) = (
            _settings.Refrigerator,
            _formula.Formula.Lines.Any(line => line.Ingredient.StarterOf is not null)
                ? _settings.WarmestForStarter
                : _settings.WarmestLiquid
        );
        if (_formula.MixTemperature is not { } asked || Parts(_kitchen).All(part => part.Kind != HeatKind.Warmed))
            return _kitchen;
        return Mixed(Parts(coldest), _settings.Bowl.Typical)
            .Then(least =>
                Mixed(Parts(warmest), _settings.Bowl.Typical)
                    .Then(most =>
                        asked.Celsius <= least.Celsius ? coldest
                        : asked.Celsius >= most.Celsius ? warmest
                        : HeatBalance
                            .PartFor(asked, [.. Others()], Parts(_kitchen).Where(part => part.Kind == HeatKind.Warmed).Sum(Heat))
                            .Then<Temperature>(part => Whole(part))
                    )
            );

        IEnumerable<HeatPart> Others()
        {
            var parts = Parts(_kitchen);
            return [.. parts.Where(part => part.Kind != HeatKind.Warmed).Select(Part), Bowl(parts, _settings.Bowl.Typical)];
        }
    }

    private IReadOnlyList<MixPart> Parts(Temperature warmed) => [.. _formula.Formula.Lines.SelectMany(line => PartsOf(line, warmed))];

    /// <summary>One part, or several where a step heats some of it: what is said of all of it then holds of the rest.</summary>
    private IEnumerable<MixPart> PartsOf(FormulaLine line, Temperature warmed)
    {
        var heats = _heats[line.Ingredient.Id].ToList();
        var rest = 1.0;
        foreach (var heat in heats.Where(heat => heat.IsOfAPart))
        {
            rest -= heat.Share;
            yield return Part(line, heat.Share, heat.Kind, warmed);
        }
        if (rest > LeastShare)
            yield return Part(line, rest, heats.Find(heat => !heat.IsOfAPart)?.Kind ?? Untouched(line.Ingredient), warmed) with
            {
                IsRest = rest < 1,
            };
    }

    /// <summary>Three thirds are all of it.</summary>
    private const double LeastShare = 1e-6;

    private MixPart Part(FormulaLine line, double share, HeatKind kind, Temperature warmed) =>
        new(line with { Percent = line.Percent * share }, kind, BuiltAt(line.Ingredient) ?? At(kind, warmed)) { Share = share };

    private static bool IsMeltingFat(MixPart part) => part.Ingredient.Role == IngredientRole.Fat && part.Ingredient.IsKeptCold();

    /// <summary>A starter comes as warm as it was built, unless a step brings it to another temperature.</summary>
    private Temperature? BuiltAt(Ingredient ingredient) =>
        ingredient.StarterOf is not null && !_heats.Contains(ingredient.Id) ? _formula.StarterBuild?.Temperature : null;

    /// <summary>What no step heats: water is drawn as it is wanted.</summary>
    private HeatKind Untouched(Ingredient ingredient) =>
        _isWaterDrawn && TapWater.Is(ingredient) ? HeatKind.Warmed
        : ingredient.IsKeptCold() && BuiltAt(ingredient) is null ? HeatKind.Cold
        : HeatKind.AsStored;

    private Temperature At(HeatKind kind, Temperature warmed) =>
        kind switch
        {
            HeatKind.AsStored => _kitchen,
            HeatKind.Cold => _settings.Refrigerator,
            HeatKind.Tempered => Temperature.FromCelsius(
                _settings.Refrigerator.Celsius + _settings.TemperedShare * (_kitchen.Celsius - _settings.Refrigerator.Celsius)
            ),
            HeatKind.Melted => _settings.MeltedFat,
            HeatKind.Cooked => _settings.CookedPaste,
            HeatKind.Boiled => _settings.Boiling,
            HeatKind.Warmed => warmed,
        };

    private Computed<Temperature> Mixed(IReadOnlyList<MixPart> parts, double bowl) =>
        HeatBalance.Mixed([.. parts.Select(Part), .. bowl > 0 ? [Bowl(parts, bowl)] : Array.Empty<HeatPart>()]);

    /// <summary>The bowl pulls towards the kitchen: no more and no less than its settings, and the probe errs to both sides.</summary>
    private Band<Temperature> Band(IReadOnlyList<MixPart> parts, Temperature mixed)
    {
        var ends = new[] { Mixed(parts, _settings.Bowl.Low).Value.Celsius, Mixed(parts, _settings.Bowl.High).Value.Celsius };
        return new(
            InDegrees(Temperature.FromCelsius(ends.Min() - _settings.Probe.Kelvins), Math.Floor),
            // What is asked and comes out within half a degree stays as somebody wrote it: 78 °F is no whole number of °C.
            _formula.MixTemperature
                is { } asked
            && Math.Abs(asked.Celsius - mixed.Celsius) <= HalfADegree
                ? asked
                : Whole(mixed),
            InDegrees(Temperature.FromCelsius(ends.Max() + _settings.Probe.Kelvins), Math.Ceiling)
        );
    }

    private const double HalfADegree = 0.5;

    private static HeatPart Part(MixPart part) => HeatPart.Of(part.Ingredient, Mass.FromGrams(part.Line.Percent), part.Temperature);

    private HeatPart Bowl(IReadOnlyList<MixPart> parts, double share) => new("Bowl", share * parts.Sum(Heat), _kitchen);

    private static double Heat(MixPart part) => Part(part).JoulesPerKelvin;

    private Temperature Whole(Temperature temperature) =>
        InDegrees(temperature, degrees => Math.Round(degrees, MidpointRounding.AwayFromZero));

    /// <summary>To whole degrees as the class's probes show them. A little less than nothing is nothing: 75 °F may be 75.0000001.</summary>
    private Temperature InDegrees(Temperature temperature, Func<double, double> whole) =>
        _settings.CountsFahrenheit
            ? Temperature.FromFahrenheit(whole(Math.Round(temperature.Fahrenheit, 6, MidpointRounding.AwayFromZero)))
            : Temperature.FromCelsius(whole(Math.Round(temperature.Celsius, 6, MidpointRounding.AwayFromZero)));

    private static Impossibility TooFar(Temperature asked, MixBalance balance)
    {
        var comes = FormattableString.Invariant(
            $"{asked.Celsius:0} °C ({asked.Fahrenheit:0} °F) is asked of the mix, and it comes to {balance.Mixed.Typical.Celsius:0} °C ({balance.Mixed.Typical.Fahrenheit:0} °F)"
        );
        return balance.Warmed.Count == 0
            ? new(
                "mix-out-of-reach",
                $"{comes} with what stands in the refrigerator and in the kitchen.",
                "Warm an ingredient in a step, or ask for no mix temperature."
            )
            : new(
                "mix-out-of-reach",
                FormattableString.Invariant(
                    $"{comes}, even with {string.Join(" and ", balance.Warmed.Select(part => part.Ingredient.Name.ToLowerInvariant()))} at {balance.Warmed[0].Temperature.Celsius:0} °C ({balance.Warmed[0].Temperature.Fahrenheit:0} °F)."
                ),
                "Bring flour and bowl to another temperature, or expect this one."
            );
    }
}
