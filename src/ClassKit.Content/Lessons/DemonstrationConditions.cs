using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>
/// Reads what stands behind the minutes of a demonstration: <c>before Popovers: Fill, after Popovers: Warm, burner, oven 220 °C, bakes 35
/// min, door shut</c>, <c>no oven</c>, or <c>control of Muffins</c>.
/// </summary>
internal sealed partial class DemonstrationConditions
{
    private static readonly string[] Words =
    [
        "before Popovers: Fill",
        "after Popovers: Bake",
        "oven 220 °C",
        "bakes 35 min",
        BenchWords.DoorShut,
        "no oven",
        "control of Muffins",
        .. BenchWords.Equipment,
    ];

    private readonly List<EquipmentCount> _uses = [];

    public DemonstrationConditions(string conditions, int line, IReadOnlyList<LessonFormula> formulas, bool allRead, ProblemList problems)
    {
        Temperature? oven = null;
        int? bakes = null;
        var isShut = false;
        foreach (var condition in conditions.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (Moment().Match(condition) is { Success: true } moment)
            {
                var found = BreadStep.Find(
                    moment.Groups["bread"].Value.Trim(),
                    moment.Groups["step"].Value.Trim(),
                    line,
                    formulas,
                    allRead,
                    problems
                )
                    is var (bread, step)
                    ? new LessonStep(bread, step)
                    : null;
                if (moment.Groups["when"].Value.Equals("before", StringComparison.OrdinalIgnoreCase))
                    Before = found;
                else
                    After = found;
            }
            else if (condition.Equals("no oven", StringComparison.OrdinalIgnoreCase))
                SaysNoOven = true;
            else if (condition.Equals(BenchWords.DoorShut, StringComparison.OrdinalIgnoreCase))
                isShut = true;
            else if (ControlOf().Match(condition) is { Success: true } control)
                Control = Unleavened(control.Groups["bread"].Value.Trim(), line, formulas, allRead, problems);
            else if (BenchWords.OvenAt(condition) is { } heat)
                oven = Dimensions.Temperature.Read(new(heat, line), "The oven's temperature", Dimensions.KitchenDegrees, problems);
            else if (Bakes().Match(condition) is { Success: true } time)
                bakes = int.Parse(time.Groups["minutes"].Value, CultureInfo.InvariantCulture);
            else if (BenchWords.Counted(condition) is var (count, what) && count > 0 && EquipmentKind.Find(what) is { } kind)
                _uses.Add(new(kind, count));
            else
                problems.Add(
                    line,
                    $"The demonstration's brackets hold `{condition}`, which is not known here",
                    NearestWord.Advice(condition, Words)
                );
        }
        if ((oven is null) != (bakes is null) || (isShut && oven is null))
            problems.Add(
                line,
                "The demonstration bakes, and its brackets do not say both how hot and how long",
                "Write both: `oven 220 °C, bakes 35 min`, and `door shut` besides if nobody may open it."
            );
        else if (oven is { } dial && bakes is { } minutes)
            Bake = new(dial, minutes, isShut);
    }

    public LessonStep? Before { get; }

    public LessonStep? After { get; }

    public IReadOnlyList<EquipmentCount> Uses => _uses;

    public DemonstrationBake? Bake { get; }

    /// <summary>True if an oven is only spoken of.</summary>
    public bool SaysNoOven { get; }

    /// <summary>The bread that it mixes without its leavening; null for none.</summary>
    public string? Control { get; }

    private static string? Unleavened(string bread, int line, IReadOnlyList<LessonFormula> formulas, bool allRead, ProblemList problems)
    {
        if (BreadStep.Bread(bread, line, formulas, allRead, problems) is not { } found)
            return null;
        if (found.Formula.Leavening == Leavening.Steam)
            problems.Add(
                line,
                $"{found.Formula.Title} has no control",
                "Its steam comes from the water of the batter and cannot be left out: name a bread that yeast, soda or powder raises."
            );
        return found.Formula.Id;
    }

    [GeneratedRegex(@"^control\s+of\s+(?<bread>.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex ControlOf();

    [GeneratedRegex(@"^(?<when>before|after)\s+(?<bread>[^:]+):(?<step>.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Moment();

    [GeneratedRegex(@"^bakes\s+(?<minutes>[0-9]{1,3})\s*min$", RegexOptions.IgnoreCase)]
    private static partial Regex Bakes();
}
