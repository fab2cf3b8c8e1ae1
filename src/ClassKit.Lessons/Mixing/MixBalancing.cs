using ClassKit.Baking.Explanations;
using ClassKit.Baking.FoodSafety;
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
    private readonly Dictionary<string, HeatKind> _kinds;

    public MixBalancing(LessonFormula formula, Temperature kitchen, MixSettings settings)
    {
        (_formula, _kitchen, _settings) = (formula with { Formula = formula.Dried }, kitchen, settings);
        _kinds = formula
            .Steps.SelectMany(step => step.Work.Heats)
            .Where(heat => heat.Kind != HeatKind.Boiled || Scald.IsHot(formula, heat.Ingredient))
            .DistinctBy(heat => heat.Ingredient.Id)
            .ToDictionary(heat => heat.Ingredient.Id, heat => heat.Kind);
        if (!TapWater.IsDrawnFor(formula))
            return;
        foreach (var line in formula.Formula.Lines.Where(line => TapWater.Is(line.Ingredient)))
            _kinds[line.Ingredient.Id] = HeatKind.Warmed;
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
        if (_formula.MixTemperature is not { } asked || !_kinds.ContainsValue(HeatKind.Warmed))
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

    private IReadOnlyList<MixPart> Parts(Temperature warmed) =>
        [
            .. _formula.Formula.Lines.Select(line => new MixPart(
                line,
                KindOf(line.Ingredient),
                BuiltAt(line.Ingredient) ?? At(KindOf(line.Ingredient), warmed)
            )),
        ];

    private static bool IsMeltingFat(MixPart part) => part.Ingredient.Role == IngredientRole.Fat && part.Ingredient.IsKeptCold();

    /// <summary>A starter comes as warm as it was built, unless a step brings it to another temperature.</summary>
    private Temperature? BuiltAt(Ingredient ingredient) =>
        ingredient.StarterOf is not null && !_kinds.ContainsKey(ingredient.Id) ? _formula.StarterBuild?.Temperature : null;

    private HeatKind KindOf(Ingredient ingredient) =>
        _kinds.TryGetValue(ingredient.Id, out var kind) ? kind
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
            Temperature.FromCelsius(Math.Floor(ends.Min() - _settings.Probe.Kelvins)),
            Whole(mixed),
            Temperature.FromCelsius(Math.Ceiling(ends.Max() + _settings.Probe.Kelvins))
        );
    }

    private static HeatPart Part(MixPart part) => HeatPart.Of(part.Ingredient, Mass.FromGrams(part.Line.Percent), part.Temperature);

    private HeatPart Bowl(IReadOnlyList<MixPart> parts, double share) => new("Bowl", share * parts.Sum(Heat), _kitchen);

    private static double Heat(MixPart part) => Part(part).JoulesPerKelvin;

    private static Temperature Whole(Temperature temperature) =>
        Temperature.FromCelsius(Math.Round(temperature.Celsius, MidpointRounding.AwayFromZero));

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
