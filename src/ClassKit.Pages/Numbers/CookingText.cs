using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;
using ClassKit.Lessons.Packs;

namespace ClassKit.Pages.Numbers;

/// <summary>Where breads are cooked, in words.</summary>
internal static class CookingText
{
    /// <summary>Where nobody can say what will be measured.</summary>
    public const string NotPredicted = "cannot be predicted";

    /// <summary>The same in the middle of a sentence, where a number would stand.</summary>
    public const string NoNumber = "what nobody can predict";

    /// <summary>Why not.</summary>
    public const string WhyNotPredicted =
        "No published figure says how far such a dough rises when it is cooked so: measure it, and write it down for the next class.";

    /// <summary>Why not, of a bread that stands or rises for longer than it should.</summary>
    public const string WhyNotHeld =
        "Past its time a dough lets gas go, and no published figure says how much: measure it, and write it down for the next class.";

    /// <summary>Why not, of a leavening that has grown old.</summary>
    public const string WhyNotAged =
        "What age leaves of a leavening hangs on how damp and how warm it stood, and no published figure says it: what it foams in water beside a fresh one tells you more.";

    /// <summary>What shows it before anything is baked.</summary>
    public const string ShowAge =
        "First stir half a teaspoon of it into a little hot water, and as much of a fresh one into another cup (yeast: warm water with a pinch of sugar, 10 min), and write down how each foams.";

    /// <summary>Why not, of a dough that was frozen.</summary>
    public const string WhyNotFrozen =
        "Yeast dies and gluten is cut by ice as a dough freezes, by yeast, freezer and weeks, and no published figure holds for all of them: measure it, and write it down for the next class.";

    /// <summary>Why not, of a bread that nothing leavens.</summary>
    public const string WhyNotLeavened =
        "Nothing in it makes gas: air and steam alone widen it, and no published figure says how far. Measure it, and write it down for the next class.";

    /// <summary>Why a bread's rise is not predicted.</summary>
    public static string WhyNot(LessonFormula bread) =>
        bread.HasAgedLeavening ? WhyNotAged
        : bread.Place is { IsPastItsTime: true } ? WhyNotHeld
        : bread.IsFrozenDough ? WhyNotFrozen
        : bread.Formula.Leavening == Leavening.None ? WhyNotLeavened
        : WhyNotPredicted;

    /// <summary>How a batch fills a steamer whose baskets have a stated width.</summary>
    public static string InSteamer(SteamerLoad load, LessonFormula bread, UnitSystem units) =>
        $"A basket of {Wide(load.PlaceMillimetres, units)} takes {NumberText.AtMost(load.ToAPlace, 0)} {(load.ToAPlace == 1 ? bread.Piece : bread.Pieces)}, "
        + $"{Wide(load.PieceMillimetres, units)} wide when done and {Wide(RoundPlace.Gap, units)} apart: {EquipmentKind.Steamer.Place.Counted(load.Places)}";

    private static string Wide(double millimetres, UnitSystem units) =>
        units switch
        {
            UnitSystem.Metric => Centimetres(millimetres),
            UnitSystem.UnitedStates => Inches(millimetres),
            UnitSystem.Both => $"{Centimetres(millimetres)} ({Inches(millimetres)})",
        };

    private static string Centimetres(double millimetres) => NumberText.WithUnit(NumberText.AtMost(millimetres / 10, 0), "cm");

    private static string Inches(double millimetres) => NumberText.WithUnit(NumberText.AtMost(millimetres / 25.4, 1), "in");

    /// <summary>What freezing and reheating do that nobody can compute; empty where a bread is neither frozen nor reheated.</summary>
    public static string Afterwards(LessonFormula bread, UnitSystem units)
    {
        string[] told =
        [
            .. bread.IsFrozenDough
                ? ["Frozen as a dough: what that costs it in gas and in height cannot be predicted."]
                : Array.Empty<string>(),
            .. !bread.IsFrozenDough && bread.Steps.Any(step => step.IsFreezing)
                ?
                [
                    "Frozen after baking: thawed, it is about as stale as a day older (common practice, no source); what it loses in the freezer cannot be predicted, so weigh it before and after.",
                ]
                : Array.Empty<string>(),
            .. bread
                .Cooking.Where(step => step.Work.Reheats)
                .Select(step =>
                    $"Reheated: {KitchenText.Step(step, units)}, {KitchenText.Minutes(step.MinMinutes, step.MaxMinutes)}; what it loses by that cannot be predicted."
                ),
        ];
        return string.Join(" ", told);
    }

    /// <summary>What stands before a card's heat: "Oven", "Steamer"; "Cooked" where it changes over.</summary>
    public static string Heading(LessonFormula formula) => WaysOf(formula) is [var way] ? Capital(CookingPlace.Of(way).Name) : "Cooked";

    /// <summary>How hot, one after the other: "220 °C, then 175 °C", "pan 245 °C, then flame", "at the boiling point".</summary>
    public static string Heats(LessonFormula formula, UnitSystem units)
    {
        var isOneWay = WaysOf(formula).Count == 1;
        return string.Join(
            ", then ",
            formula
                .Cooking.Where(step => step.IsBaking)
                .Select(step =>
                    (isOneWay, step) switch
                    {
                        (true, { Temperature: { } heat }) => KitchenText.Oven(heat, units),
                        (true, { Way: CookingWay.Steamer or CookingWay.BoilingWater }) => "at the boiling point",
                        (true, _) => "as hot as it is",
                        _ => KitchenText.Step(step, units),
                    }
                )
                .Distinct()
        );
    }

    /// <summary>"in the oven", "in the fat"; "in the heat" of breads that are cooked otherwise than each other.</summary>
    public static string In(IEnumerable<LessonFormula> formulas) => CommonWay(formulas) is { } way ? In(way) : "in the heat";

    /// <summary>"the oven", "the steamer"; "the heat" of breads that are cooked otherwise than each other.</summary>
    public static string Place(IEnumerable<LessonFormula> formulas) =>
        CommonWay(formulas) is { } way and not CookingWay.BoilingWater ? $"the {CookingPlace.Of(way).Name}" : "the heat";

    /// <summary>The same of one bread.</summary>
    public static string In(LeaveningComparison compared) => In([compared.Bread]);

    private static string In(CookingWay way) =>
        way switch
        {
            CookingWay.Griddle => "on the griddle",
            CookingWay.Fryer => "in the fat",
            CookingWay.Flame => "over the flame",
            CookingWay.BoilingWater => "in the boiling water",
            _ => $"in the {CookingPlace.Of(way).Name}",
        };

    private static CookingWay? CommonWay(IEnumerable<LessonFormula> formulas) =>
        formulas.SelectMany(WaysOf).Distinct().ToList() is [var way] ? way : null;

    private static List<CookingWay> WaysOf(LessonFormula formula) =>
        [.. formula.Cooking.Where(step => step.IsBaking).Select(step => step.Way!.Value).Distinct()];

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
