using System.Runtime.CompilerServices;
using ClassKit.Baking.Allergens;
using ClassKit.Baking.Altitude;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Exercises.Randomness;
using ClassKit.Lessons.Adapting;
using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;
using ClassKit.Lessons.Purchasing;
using ClassKit.Lessons.Sensory;
using ClassKit.Lessons.Series;

namespace ClassKit.Lessons.Packs;

/// <summary>
/// Everything computed from a lesson for one class, before anybody has planned when it is done: the first stage of a
/// <see cref="LessonPack"/>.
/// </summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Class">The class.</param>
/// <param name="Pressure">The air's, at the kitchen's altitude by the standard atmosphere.</param>
/// <param name="BoilingPoint">Of water, under that pressure.</param>
/// <param name="Cards">One for each formula, in the lesson's order, for one team.</param>
/// <param name="Requisition">What the whole class needs, each ingredient once, in the order of first use.</param>
/// <param name="Comparison">The leavenings on one axis, in the lesson's order.</param>
public record ComputedPack(
    Lesson Lesson,
    ClassProfile Class,
    Pressure Pressure,
    Temperature BoilingPoint,
    IReadOnlyList<FormulaCard> Cards,
    IReadOnlyList<RequisitionLine> Requisition,
    IReadOnlyList<LeaveningComparison> Comparison
)
{
    /// <summary>What the ingredients cost together; null without a price list.</summary>
    public PurchaseTotal? Cost => Class.Prices is null ? null : PurchaseTotal.Of(Requisition);

    /// <summary>What must be declared, over all formulas and what demonstrations weigh out, each once, by name.</summary>
    public IReadOnlyList<Allergen> Allergens => Lesson.Allergens;

    /// <summary>
    /// What the class tastes behind numbers: the same numbers for the same lesson and class. Where there is no time for all of a series,
    /// the breads as written; without what is cut another day, unless all is.
    /// </summary>
    public Tasting Tasting => Tastings.GetValue(this, pack => pack.DrawTasting());

    private Tasting DrawTasting() => Tasting.For(Tasted, Class.Students, SeededDraws.For(0, "tasting", Lesson.Id, Class.Name));

    // Twenty pages ask for these. They are kept by the pack itself and not in it: a copy with something other in it works out its own.
    private static readonly ConditionalWeakTable<ComputedPack, Tasting> Tastings = [];
    private static readonly ConditionalWeakTable<ComputedPack, IReadOnlyList<AllergyConcern>> AllConcerns = [];
    private static readonly ConditionalWeakTable<ComputedPack, IReadOnlyList<AltitudeFormula>> AllAtAltitude = [];

    /// <summary>Breads that are not on the plates of this class, because they rest for longer before they are cut.</summary>
    public IReadOnlyList<LessonFormula> CutAnotherDay => [.. Lesson.Formulas.Where(bread => bread.CutAfterMinutes is not null)];

    /// <summary>What can be served to taste: all that the class makes, where nothing of it is ready to be cut on the day.</summary>
    public IReadOnlyList<FormulaCard> Servable =>
        CutAnotherDay.Count == Lesson.Formulas.Count ? Cards : [.. Cards.Where(card => card.Bread.CutAfterMinutes is null)];

    private IReadOnlyList<LessonFormula> Tasted =>
        TastingCourse.Of(0, Lesson.SetAside.TastingMinutes).DoesFor(Servable.Count)
            ? [.. Servable.Select(card => card.Bread)]
            : [.. Servable.Select(card => card.Bread).Where(bread => bread.Place is not { IsAsWritten: false })];

    /// <summary>The lesson before anything was changed for the class, its series shared out.</summary>
    public required Lesson AsWritten { get; init; }

    /// <summary>What is other for this class than it was written.</summary>
    public IReadOnlyList<Adaptation> Adaptations { get; init; } = [];

    /// <summary>Each need of the class held against each bread and demonstration. For the instructor alone.</summary>
    public IReadOnlyList<AllergyConcern> Concerns =>
        AllConcerns.GetValue(this, pack => AllergyConcern.Of(pack.Cards, pack.Lesson.Demonstrations, pack.Class));

    /// <summary>How each formula is changed for this kitchen's altitude, with the published ranges and the first trial; the cards carry it
    /// only where the class asks for it. Empty below 3000 ft. Of a series the bread as written alone: all ways are changed alike.</summary>
    public IReadOnlyList<AltitudeFormula> AtAltitude => AllAtAltitude.GetValue(this, pack => pack.AdjustForAltitude());

    private IReadOnlyList<AltitudeFormula> AdjustForAltitude() =>
        Class.AltitudeMetres < AltitudeTable.LowestMetres
            ? []
            :
            [
                .. AsWritten
                    .Formulas.Where(formula => formula.Place is not { IsAsWritten: false })
                    .Select(formula => formula.AtAltitude(Class.AltitudeMetres).Value),
            ];

    /// <summary>
    /// The same breads as written at sea level, in the lesson's order, to stand beside what is computed for here; empty where the kitchen
    /// is below 3000 ft.
    /// </summary>
    public IReadOnlyList<LeaveningComparison> AtSeaLevel { get; init; } = [];

    /// <summary>What the class holds a bread against to see its leavening alone; empty where no demonstration mixes one.</summary>
    public IReadOnlyList<ControlBatch> Controls { get; init; } = [];

    /// <summary>
    /// The control of a bread; null where it has none. The breads of a series have that of the bread as written: every team gets a portion.
    /// </summary>
    public ControlBatch? ControlOf(LessonFormula bread) =>
        Controls.FirstOrDefault(control =>
            control.Of.Formula.Id == (bread.Place?.OfId ?? bread.Formula.Id)
            && bread.Formula.Lines.Any(line => control.LeftOut.Contains(line.Ingredient))
        );

    /// <summary>Computes the pack, with the default assumptions.</summary>
    public static Computed<ComputedPack> Build(Lesson lesson, ClassProfile profile) => Build(lesson, profile, PackSettings.Default);

    /// <summary>Computes the pack, or says which formula or which setting of the class makes it impossible.</summary>
    /// <param name="asWritten">The lesson.</param>
    /// <param name="profile">The class.</param>
    /// <param name="settings">What is assumed.</param>
    public static Computed<ComputedPack> Build(Lesson asWritten, ClassProfile profile, PackSettings settings)
    {
        ArgumentNullException.ThrowIfNull(asWritten);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(settings);
        if (profile.Teams < 1)
            return new Impossibility("no-teams", $"{profile.Name} has {profile.Teams} teams.", "A class needs at least one team.");
        if (!StandardAtmosphere.PressureAt(profile.AltitudeMetres).TryGet(out var pressure, out var why))
            return why;

        asWritten = SharedOut.Among(asWritten, profile.Teams);
        var (lesson, adjusted) = AltitudeAdapting.Of(asWritten, profile);
        List<LessonDemonstration> shown = [];
        foreach (var demonstration in lesson.Demonstrations)
        {
            if (!ControlBatch.WeighedFor(demonstration, lesson, profile).TryGet(out var weighed, out why))
                return why;
            shown.Add(weighed);
        }
        lesson = lesson with { Demonstrations = shown };
        List<FormulaCard> cards = [];
        List<LeaveningComparison> comparison = [];
        List<LeaveningComparison> seaLevel = [];
        foreach (var (formula, written) in lesson.Formulas.Zip(asWritten.Formulas))
        {
            if (!FormulaCard.For(formula, profile, settings).TryGet(out var card, out why))
                return InFormula(formula, why);
            var place = new BenchPlace(card.Mix.Mixed.Typical, profile.KitchenTemperature, card.Batch.Exact);
            if (!LeaveningComparison.Of(formula, place, pressure, settings.Gas).TryGet(out var compared, out why))
                return InFormula(formula, why);
            if (SteamerLoad.Of(formula, card.Pieces, compared.WidthMillimetres, profile) is { } load)
            {
                var filled = load.In(formula);
                (card, compared) = (card with { Bread = filled, Steamed = load }, compared with { Bread = filled });
            }
            cards.Add(card);
            comparison.Add(compared);
            if (profile.AltitudeMetres >= AltitudeTable.LowestMetres)
            {
                if (!LeaveningComparison.Of(written, place, Pressure.Standard, settings.Gas).TryGet(out var below, out why))
                    return InFormula(formula, why);
                seaLevel.Add(below);
            }
        }
        lesson = lesson with { Formulas = [.. cards.Select(card => card.Bread)] };
        if (
            !ControlBatch
                .AllOf(
                    lesson,
                    profile,
                    bread => cards.First(card => card.Bread.Formula.Id == bread.Formula.Id).Mix.Mixed.Typical,
                    pressure,
                    settings.Gas
                )
                .TryGet(out var controls, out why)
        )
            return why;
        var charged = FormulaCard.Charged(cards, profile);
        if (
            !RequisitionLine
                .Priced(RequisitionLine.For(charged, lesson.Demonstrations, profile), profile.Prices)
                .TryGet(out var requisition, out why)
        )
            return why;
        return new ComputedPack(lesson, profile, pressure, Saturation.BoilingPoint(pressure), charged, requisition, comparison)
        {
            AsWritten = asWritten,
            AtSeaLevel = seaLevel,
            Controls = controls,
            Adaptations = [.. adjusted, .. FlourOnHand.Missing(cards, profile)],
        };
    }

    /// <summary>The pack for a class in which some breads are left to the instructor, who makes one load for all.</summary>
    /// <param name="formulaIds">Those breads.</param>
    public ComputedPack LeftToInstructor(IReadOnlyCollection<string> formulaIds)
    {
        ArgumentNullException.ThrowIfNull(formulaIds);
        var cards = FormulaCard.Charged(
            [.. Cards.Select(card => formulaIds.Contains(card.Bread.Formula.Id) ? card with { Teams = [], TeamNames = [] } : card)],
            Class
        );
        return this with
        {
            Cards = cards,
            Requisition = RequisitionLine.Priced(RequisitionLine.For(cards, Lesson.Demonstrations, Class), Class.Prices).Value,
        };
    }

    private static Impossibility InFormula(LessonFormula formula, Impossibility why) =>
        why with
        {
            Message = $"{formula.Formula.Title}: {why.Message}",
        };
}
