using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cooking;

namespace ClassKit.Content.Lessons;

/// <summary>Reads what stands behind the duration in a step's brackets, each for itself; whether they go together is <see cref="StepConditions"/>'s.</summary>
/// <param name="longest">The minutes that the step takes at most.</param>
/// <param name="line">Where it stands.</param>
/// <param name="problems">Takes what cannot be read.</param>
internal sealed partial class StepConditionReader(int longest, int line, ProblemList problems)
{
    public const string Unattended = "unattended";
    public const string Reheats = "reheats";
    private const string OvenReady = "oven ready";
    private const string KeepsOvernight = "keeps overnight";
    private const string NoWait = "no wait";
    private const string Mixes = "mixes";

    /// <summary>What may be written, as advice names it.</summary>
    private static readonly string[] Words =
    [
        "28 °C",
        .. BenchWords.CookingExamples,
        Unattended,
        "2 people",
        "2 oven places",
        "2 steamer places",
        BenchWords.DoorShut,
        OvenReady,
        KeepsOvernight,
        NoWait,
        Reheats,
        Mixes,
        "wait up to 10 min",
        "each 2–3 min",
        "warms whole milk",
        "melts unsalted butter",
        "tempers unsalted butter",
        "boils water",
        "boils 40 % of the water",
        "cooks bread flour",
        .. BenchWords.Equipment,
    ];

    /// <summary>What it says; null where it cannot be read, which is noted.</summary>
    public StepCondition? Read(string condition) =>
        condition.ToLowerInvariant() switch
        {
            Unattended => new StepCondition.Staffed(condition, 0),
            BenchWords.DoorShut => new StepCondition.Said(condition, work => work with { DoorShut = true }),
            OvenReady => new StepCondition.Said(condition, work => work with { OvenReady = true }),
            KeepsOvernight => new StepCondition.Said(condition, work => work with { KeepsOvernight = true }),
            Reheats => new StepCondition.Said(condition, work => work with { Reheats = true }),
            Mixes => new StepCondition.Said(condition, work => work with { Mixes = true }),
            NoWait => new StepCondition.Waits(condition, WaitWindow.None),
            _ => WithNumbers(condition),
        };

    private StepCondition? WithNumbers(string condition)
    {
        if (BenchWords.Cooking(condition) is var (place, heat))
            return new StepCondition.CookedIn(condition, place, heat);
        if (Waiting().Match(condition) is { Success: true } wait)
            return Window(wait);
        if (OneByOne().Match(condition) is { Success: true } each)
            return Piece(each);
        if (condition.StartsWith("each ", StringComparison.OrdinalIgnoreCase))
            return Refused(
                $"The brackets hold `{condition}`",
                "How long one piece takes is written in whole minutes, behind the duration of the step: `(8–10 min, pan 230 °C, each 1–2 min)`. Say what is shorter in the words of the step: `20 to 30 s over the flame`."
            );
        if (Heating().Match(condition) is { Success: true } heating)
            return Heat(condition, heating);
        if (BenchWords.Counted(condition) is var (count, what))
            return Count(condition, count, what);
        return new StepCondition.Degrees(condition);
    }

    private StepCondition? Count(string condition, int count, string what)
    {
        if (count == 0)
            return Refused($"The brackets hold `{condition}`", "Leave out what the step does not take.");
        if (what is "people" or "person")
            return new StepCondition.Staffed(condition, count);
        if (PlacesOf(what) is { } of)
            return new StepCondition.Places(condition, of, count);
        return EquipmentKind.Find(what) is { } kind
            ? new StepCondition.Occupies(condition, new(kind, count))
            : Refused($"The brackets hold `{condition}`, which is not known here", NearestWord.Advice(what, Words));
    }

    /// <summary>What the places are of; null for other words.</summary>
    private static CookingPlace? PlacesOf(string what) =>
        CookingPlace.All.FirstOrDefault(place => what == $"{place.Name} place" || what == $"{place.Name} places");

    private StepCondition.Heats? Heat(string condition, Match heating)
    {
        var (kind, how) = (Kind(heating.Groups["how"].Value), heating.Groups["how"].Value);
        var share = Share(heating);
        if (share is null or <= 0 or > 1)
        {
            Refused(
                $"The brackets hold `{condition}`",
                $"Write a part of an ingredient in percent of it, above 0 and at most 100: `{how} 40 % of {heating.Groups["what"].Value}`."
            );
            return null;
        }
        return KnownIngredient.Find(new(heating.Groups["what"].Value, line), problems) is { } ingredient
            ? new(condition, new(ingredient, kind) { Share = share.Value })
            : null;
    }

    /// <summary>1 where nothing is said; null for a number that is none.</summary>
    private static double? Share(Match heating) =>
        heating.Groups["part"].Success
            ? heating.Groups["part"].Value.ToLowerInvariant() switch
            {
                "half" => 1 / 2.0,
                "a third" => 1 / 3.0,
                "two thirds" => 2 / 3.0,
                "a quarter" => 1 / 4.0,
                _ => 3 / 4.0,
            }
        // All of it, or what other steps leave of it.
        : !heating.Groups["percent"].Success ? 1
        : double.TryParse(heating.Groups["percent"].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent)
            ? PerHundred.Share(percent)
        : null;

    private static HeatKind Kind(string how) =>
        how.ToLowerInvariant() switch
        {
            "warms" => HeatKind.Warmed,
            "melts" => HeatKind.Melted,
            "cooks" => HeatKind.Cooked,
            "boils" => HeatKind.Boiled,
            _ => HeatKind.Tempered,
        };

    private StepCondition? Window(Match wait)
    {
        var (least, most) = (Whole(wait.Groups["min"]), Whole(wait.Groups["max"]));
        return least <= most
            ? new StepCondition.Waits(wait.Value, new(least, most))
            : Refused($"The wait is `{wait.Value}`", "Write the shorter time first.");
    }

    private StepCondition? Piece(Match each)
    {
        var least = Whole(each.Groups["min"]);
        var most = each.Groups["max"].Success ? Whole(each.Groups["max"]) : least;
        return least > 0 && least <= most && most <= longest
            ? new StepCondition.OneByOne(each.Value, new(least, most))
            : Refused(
                $"One piece takes `{each.Value}`",
                least > most ? "Write the shorter time first." : $"Write at least one minute, and no more than the {longest} of the step."
            );
    }

    private StepCondition? Refused(string found, string expected)
    {
        problems.Add(line, found, expected);
        return null;
    }

    private static int Whole(Group digits) => digits.Success ? int.Parse(digits.Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^wait\s+(up\s+to\s+|(?<min>[0-9]{1,3})\s*[–-]\s*)(?<max>[0-9]{1,3})\s*min$", RegexOptions.IgnoreCase)]
    private static partial Regex Waiting();

    [GeneratedRegex(@"^each\s+(?<min>[0-9]{1,3})(\s*[–-]\s*(?<max>[0-9]{1,3}))?\s*min$", RegexOptions.IgnoreCase)]
    private static partial Regex OneByOne();

    [GeneratedRegex(
        @"^(?<how>warms|melts|tempers|cooks|boils)\s+(((?<percent>[0-9.,]+)\s*%|(?<part>half|a third|two thirds|a quarter|three quarters)|the rest)\s+(of\s+)?(the\s+)?)?(?<what>\S.*)$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Heating();
}
