using ClassKit.Baking.Cooking;
using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Lessons.Packs;

/// <summary>What a lesson asks of a class at the benches.</summary>
public static class BenchClasses
{
    /// <summary>The class that a bench plan is made for.</summary>
    /// <param name="lesson">What is baked and shown.</param>
    /// <param name="profile">Teams and kitchen. Everybody helps somewhere: a team counts on as many people as the smallest has.</param>
    public static BenchClass Of(Lesson lesson, ClassProfile profile)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(profile);
        var aside = lesson.SetAside;
        return new(
            new(profile.PeriodMinutes, aside.SetupMinutes, aside.TastingMinutes, aside.CleanupMinutes),
            profile.Teams,
            profile.SmallestTeam,
            Equipment(lesson, profile),
            new(profile.Ovens, profile.OvenPlaces, profile.OvenHeatUpMinutes, OvenBank.UsualWarming, OvenBank.UsualCooling),
            [
                .. lesson.Formulas.Select(formula => Bread(formula, lesson, profile)),
                .. lesson.Demonstrations.Where(shown => shown.Bake is not null).Select(Shown),
            ],
            [.. lesson.Demonstrations.Select(shown => Demonstration(lesson, profile, shown))]
        )
        {
            TeamNames = [.. profile.NamedTeams.Select(team => team.Name)],
            CookedFirst = CookingOrder.Of(lesson.Formulas, profile),
            ShownBehind = CookingOrder.Shown(lesson),
        };
    }

    /// <summary>What the profile counts. Where it counts no scales, each team has the two that every station list sets out.</summary>
    private static IReadOnlyList<EquipmentCount> Equipment(Lesson lesson, ClassProfile profile)
    {
        var appliances = Appliances(lesson, profile);
        var used = lesson
            .Formulas.SelectMany(formula => formula.Steps)
            .SelectMany(step => step.Work.Uses)
            .Concat(lesson.Demonstrations.SelectMany(shown => shown.Uses))
            .Select(use => use.Kind)
            .ToHashSet();
        return
        [
            .. profile.Equipment.Where(count =>
                appliances.All(appliance => appliance.Kind != count.Kind && appliance.Kind != count.Kind.Place)
            ),
            .. appliances,
            .. new[] { EquipmentKind.Scale, EquipmentKind.SmallScale }
                .Where(scale => used.Contains(scale) && profile.Equipment.All(count => count.Kind != scale))
                .Select(scale => new EquipmentCount(scale, profile.Teams) { IsAssumed = true }),
        ];
    }

    /// <summary>
    /// What cooks besides ovens, with its heating-up. Where a profile counts none, each team has one; where one takes several loads, its
    /// places are counted.
    /// </summary>
    private static List<EquipmentCount> Appliances(Lesson lesson, ClassProfile profile)
    {
        List<EquipmentCount> appliances = [];
        foreach (
            var place in lesson
                .Formulas.SelectMany(formula => formula.Cooking)
                .Select(step => CookingPlace.Of(step.Way!.Value))
                .Where(place => place.HeatUpMinutes > 0 && place.Kind is not null)
                .Distinct()
        )
        {
            var has = profile.ApplianceOf(place.Kind!);
            appliances.Add(
                new(has.Places > 1 ? place.Kind!.Place : place.Kind!, (has.Count ?? profile.Teams) * has.Places)
                {
                    HeatUpMinutes = has.HeatUpMinutes ?? place.HeatUpMinutes,
                    IsAssumed = has.Count is null,
                }
            );
        }
        return appliances;
    }

    private static Demonstration Demonstration(Lesson lesson, ClassProfile profile, LessonDemonstration shown) =>
        new(shown.Name, shown.Minutes, shown.FormulaId.Length == 0 ? null : Step(lesson, new(shown.FormulaId, shown.StepName)))
        {
            Uses =
            [
                .. shown.Uses.Select(use =>
                    profile.ApplianceOf(use.Kind).Places > 1 && IsCookedIn(use.Kind, lesson) ? use with { Kind = use.Kind.Place } : use
                ),
            ],
            After = shown.After is { } after ? Step(lesson, after) : null,
            Load = shown.Bake is null
                ? null
                : lesson.Formulas.Count + lesson.Demonstrations.Where(each => each.Bake is not null).ToList().IndexOf(shown),
        };

    private static StepOfBread Step(Lesson lesson, LessonStep of)
    {
        var bread = lesson.Formulas.ToList().FindIndex(formula => formula.Formula.Id == of.FormulaId);
        return new(bread, lesson.Formulas[bread].Steps.ToList().FindIndex(step => step.Name == of.StepName));
    }

    /// <summary>The instructor's own load, which stands in the plan like any other.</summary>
    private static BenchBread Shown(LessonDemonstration shown) =>
        new(
            $"shown: {shown.Name}",
            shown.Name,
            [new("Bake", shown.Bake!.Minutes, shown.Bake.Minutes) { People = 0, Oven = new(shown.Bake.Oven, 1, shown.Bake.DoorShut) }]
        )
        {
            LeftToInstructor = true,
            IsForShow = true,
        };

    private static BenchBread Bread(LessonFormula formula, Lesson lesson, ClassProfile profile)
    {
        var hasYeast = formula.Formula.Lines.Any(line => line.Ingredient.Role == IngredientRole.Yeast);
        var heats = StepHeats.Of(formula, profile.KitchenTemperature, MixSettings.Default.In(profile));
        var longest = lesson.Demonstrations.Select(shown => shown.Minutes).DefaultIfEmpty().Max();
        return new(
            formula.Formula.Id,
            formula.Formula.Title,
            [
                .. formula.Steps.Select(
                    (step, at) =>
                        Step(step, Heat(formula, at), formula, hasYeast) with
                        {
                            Uses = Uses(step, lesson, profile),
                        } with
                        {
                            Heats = heats[at],
                            ServedWithinMinutes = OutOfTheCold.MinutesUntilTasted(formula, at, profile, lesson.SetAside.TastingMinutes),
                            IsInTheCold =
                                step.IsFreezing || step.Temperature is { } place && place.Celsius <= HoldingRule.FoodCode.Cold.Celsius,
                            BakedWithinMinutes = OutOfTheCold.MinutesLeft(formula, at, heats, profile, longest),
                        }
                ),
            ]
        )
        {
            KeepsMinutes = formula.BestWithinMinutes,
            Teams = formula.Place?.Teams,
            VariantOf = formula.Place is { IsAsWritten: false } place ? place.OfId : null,
        };
    }

    /// <summary>
    /// What the oven is set to that a step needs: in it, ready before it, or kept between two bakes where hands are at the bread all the
    /// time. What cools or freezes in between is out of it.
    /// </summary>
    private static Temperature? Heat(LessonFormula formula, int at)
    {
        var steps = formula.Steps;
        var next = Enumerable.Range(at, steps.Count - at).FirstOrDefault(later => steps[later].InOven, -1);
        var last = Enumerable.Range(0, at + 1).LastOrDefault(before => steps[before].InOven || steps[before].Work.OvenReady, -1);
        if (next < 0 || last < 0)
            return null;
        var isKept = !steps[last].InOven || steps.Skip(last + 1).Take(next - last - 1).All(step => step.Work.People > 0);
        return isKept ? steps[next].Temperature : null;
    }

    /// <summary>What a step occupies. One appliance has one heat: where breads ask for several, a load has one to itself.</summary>
    private static IReadOnlyList<EquipmentCount> Uses(MethodStep step, Lesson lesson, ClassProfile profile) =>
        step.Way is { } way
        && CookingPlace.Of(way) is { Kind: { } kind, HeatUpMinutes: > 0 }
        && profile.ApplianceOf(kind) is { Places: > 1 and var places }
            ?
            [
                .. step.Work.Uses.Select(use =>
                    use.Kind != kind
                        ? use
                        : new EquipmentCount(kind.Place, HeatsOf(way, lesson) > 1 ? Math.Max(use.Count, places) : use.Count)
                ),
            ]
            : step.Work.Uses;

    /// <summary>True of what a bread of the lesson is cooked in and has to heat up: its places are counted.</summary>
    private static bool IsCookedIn(EquipmentKind kind, Lesson lesson) =>
        lesson
            .Formulas.SelectMany(formula => formula.Cooking)
            .Any(step => CookingPlace.Of(step.Way!.Value) is { HeatUpMinutes: > 0 } place && place.Kind == kind);

    private static int HeatsOf(CookingWay way, Lesson lesson) =>
        lesson
            .Formulas.SelectMany(formula => formula.Cooking)
            .Where(step => step.Way == way)
            .Select(step => step.Temperature)
            .Distinct()
            .Count();

    /// <summary>Places in the oven and a door that stays shut are of the whole bake: one step that names them is enough.</summary>
    private static BenchStep Step(MethodStep step, Temperature? heat, LessonFormula formula, bool hasYeast) =>
        new(step.Name, step.MinMinutes, step.MaxMinutes)
        {
            People = step.Work.People,
            Uses = step.Work.Uses,
            Oven = heat is { } dial
                ? new(dial, formula.Steps.Max(any => any.Work.OvenPlaces), formula.Steps.Any(any => any.Work.DoorShut))
                : null,
            Wait = step.Work.Wait,
            MayBeDoneAhead = step.Work.KeepsOvernight,
            Way = step.IsCooking ? step.Way : null,
            CookedAt = step is { IsCooking: true, InOven: false } ? step.Temperature : null,
            IsPutIn = step.IsCooking && !step.InOven && step.Work.People == 0,
            RiseAt = hasYeast && step.Work.People == 0 && !step.IsCooking ? step.Temperature : null,
        };
}
