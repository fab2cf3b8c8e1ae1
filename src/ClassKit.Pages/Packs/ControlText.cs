using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Packs;

/// <summary>A control in words that a student understands.</summary>
internal static class ControlText
{
    /// <summary>"baking powder and baking soda".</summary>
    public static string LeftOut(ControlBatch control) =>
        Phrases.List([.. control.LeftOut.Select(left => left.Name.Split(',')[0].ToLowerInvariant())]);

    /// <summary>"Control of powder rolls".</summary>
    public static string Title(ControlBatch control) => $"Control of {control.Of.Formula.Title.ToLowerInvariant()}";

    /// <summary>Its gas under its own name, to stand among the breads.</summary>
    public static LeaveningComparison Named(ControlBatch control) =>
        control.Compared with
        {
            Bread = control.Compared.Bread with { Formula = control.Compared.Bread.Formula with { Title = Title(control) } },
        };

    /// <summary>What it is.</summary>
    public static string OnTheSheet(ControlBatch control) =>
        $"The control is the marked {control.Of.Piece} among your own: the same mixture without {LeftOut(control)}.";

    /// <summary>What a difference from it says.</summary>
    public static string Shows(ControlBatch control) =>
        $"The control shows how far air and steam go by themselves; by as much as your own are higher, {LeftOut(control)} lifted them.";

    /// <summary>"for each team's tin"; a free-standing bread lies beside the team's own.</summary>
    public static string Goes(LessonFormula bread) => HasTin(bread) ? "one for each team’s tin" : "one for each team";

    /// <summary>Where and how it bakes.</summary>
    public static string Bakes(LessonFormula bread) =>
        $"{(HasTin(bread) ? "In the teams’ own tins, beside" : "Marked, among")} the {bread.Formula.Title.ToLowerInvariant()}: same {(HasTin(bread) ? "cup" : "shape")}, same {CookingText.Place([bread])["the ".Length..]}, same minute.";

    private static bool HasTin(LessonFormula bread) => bread.Shape is BakingCup or LoafTin;
}
