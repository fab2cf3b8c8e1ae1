using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Cooking;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cooking;

namespace ClassKit.Content.Lessons;

/// <summary>Reads what stands behind the duration in a step's brackets: a temperature, and what the step takes at the bench.</summary>
internal sealed partial class StepConditions
{
    private const string Unattended = "unattended";
    private const string OvenReady = "oven ready";
    private const string KeepsOvernight = "keeps overnight";
    private const string NoWait = "no wait";
    private const string Reheats = "reheats";
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
        "cooks bread flour",
        .. BenchWords.Equipment,
    ];

    private readonly ProblemList _problems;
    private readonly int _line;
    private readonly int _longest;
    private readonly List<EquipmentCount> _uses = [];
    private readonly List<IngredientHeat> _heats = [];
    private int? _people;
    private int? _places;
    private CookingPlace? _placesOf;

    /// <param name="conditions">What stands behind the duration, one by one.</param>
    /// <param name="longest">The minutes that the step takes at most.</param>
    /// <param name="line">Where it stands.</param>
    /// <param name="problems">Takes what cannot be read.</param>
    public StepConditions(IEnumerable<string> conditions, int longest, int line, ProblemList problems)
    {
        (_line, _longest, _problems) = (line, longest, problems);
        foreach (var condition in conditions)
            Read(condition);
        var place = Way is { } way ? CookingPlace.Of(way) : null;
        if (place is { IsWatched: true } && _people == 0)
            _problems.Add(
                _line,
                $"The brackets say `{Unattended}` of a {place.Name}",
                "Somebody stands by all the time: leave the word out, or write how many: `2 people`."
            );
        if (_placesOf is { Kind: not null } of && Way is null)
            _problems.Add(
                _line,
                $"The brackets name places of a {of.Name} and not that the bread is cooked in one",
                $"Write both: `{of.Name}, {_places} {of.Name} places`."
            );
        else if (_placesOf is { } other && place is not null && other != place)
            _problems.Add(
                _line,
                $"The brackets name places of one thing, `{other.Name}`, and cook in another, `{place.Name}`",
                $"Write the places of what it is cooked in: `{place.Name}, {_places} {place.Name} places`."
            );
        if (Work.Reheats && place is null)
            _problems.Add(
                _line,
                $"The brackets say `{Reheats}` and nothing heats",
                "Write what it is heated in as well: `combi oven 160 °C, reheats`."
            );
        if (place?.Kind is { } kind)
            _uses.Add(new(kind, _places ?? 1));
        // The oven of the bake is asked for its own places alone: those of a steamer before it are the steamer's.
        var ovenPlaces = place is null or { Kind: null } ? _places : null;
        Work = Work with
        {
            People = _people ?? (place is null || place.IsWatched ? 1 : 0),
            Uses = _uses,
            Heats = _heats,
            OvenPlaces = ovenPlaces ?? Work.OvenPlaces,
            StatesOvenPlaces = ovenPlaces is not null,
        };
    }

    /// <summary>What it is cooked in or over; null on the bench.</summary>
    public CookingWay? Way { get; private set; }

    /// <summary>How long one piece takes; null where nothing says so.</summary>
    public PieceTime? Each { get; private set; }

    public Temperature? Temperature { get; private set; }

    public StepWork Work { get; private set; } = StepWork.Usual;

    private void Read(string condition)
    {
        switch (condition.ToLowerInvariant())
        {
            case Unattended:
                Staff(0, condition);
                return;
            case BenchWords.DoorShut:
                Work = Work with { DoorShut = true };
                return;
            case OvenReady:
                Work = Work with { OvenReady = true };
                return;
            case KeepsOvernight:
                Work = Work with { KeepsOvernight = true };
                return;
            case Reheats:
                Work = Work with { Reheats = true };
                return;
            case Mixes:
                Work = Work with { Mixes = true };
                return;
            case NoWait:
                Work = Work with { Wait = WaitWindow.None };
                return;
        }
        if (BenchWords.Cooking(condition) is var (place, heat))
            Cook(place, heat, condition);
        else if (Waiting().Match(condition) is { Success: true } wait)
            Work = Work with { Wait = Window(wait) };
        else if (OneByOne().Match(condition) is { Success: true } each)
            Each = Piece(each);
        else if (condition.StartsWith("each ", StringComparison.OrdinalIgnoreCase))
            _problems.Add(
                _line,
                $"The brackets hold `{condition}`",
                "How long one piece takes is written in whole minutes, behind the duration of the step: `(8–10 min, pan 230 °C, each 1–2 min)`. Say what is shorter in the words of the step: `20 to 30 s over the flame`."
            );
        else if (Heating().Match(condition) is { Success: true } heating)
            Heat(heating.Groups["how"].Value, heating.Groups["what"].Value);
        else if (BenchWords.Counted(condition) is var (count, what))
            Count(condition, count, what);
        else
            Temperature = Degrees(condition);
    }

    private void Count(string condition, int count, string what)
    {
        if (count == 0)
            _problems.Add(_line, $"The brackets hold `{condition}`", "Leave out what the step does not take.");
        else if (what is "people" or "person")
            Staff(count, condition);
        else if (PlacesOf(what) is { } of)
            (_places, _placesOf) = (count, of);
        else if (EquipmentKind.Find(what) is { } kind)
            _uses.Add(new(kind, count));
        else
            _problems.Add(_line, $"The brackets hold `{condition}`, which is not known here", NearestWord.Advice(what, Words));
    }

    private void Cook(CookingPlace place, string? heat, string condition)
    {
        if (Way is not null)
            _problems.Add(
                _line,
                $"The brackets hold `{condition}` as well",
                "A step is cooked in one thing: split it where the bread changes over."
            );
        Way = place.Way;
        if (heat is not null)
            Temperature = Degrees(heat);
        if (heat is not null && !place.HasHeat)
            _problems.Add(_line, $"The brackets hold `{condition}`", $"Write `{place.Name}` alone: it is as hot as it is.");
    }

    /// <summary>What the places are of; null for other words.</summary>
    private static CookingPlace? PlacesOf(string what) =>
        CookingPlace.All.FirstOrDefault(place => what == $"{place.Name} place" || what == $"{place.Name} places");

    private void Heat(string how, string what)
    {
        if (KnownIngredient.Find(new(what, _line), _problems) is { } ingredient)
            _heats.Add(
                new(
                    ingredient,
                    how.ToLowerInvariant() switch
                    {
                        "warms" => HeatKind.Warmed,
                        "melts" => HeatKind.Melted,
                        "cooks" => HeatKind.Cooked,
                        "boils" => HeatKind.Boiled,
                        _ => HeatKind.Tempered,
                    }
                )
            );
    }

    private void Staff(int people, string condition)
    {
        if (_people is not null)
            _problems.Add(_line, $"The brackets hold `{condition}` as well", $"Say once how many people it takes, or `{Unattended}`.");
        _people = people;
    }

    private WaitWindow Window(Match wait)
    {
        var (least, most) = (Whole(wait.Groups["min"]), Whole(wait.Groups["max"]));
        if (least <= most)
            return new(least, most);
        _problems.Add(_line, $"The wait is `{wait.Value}`", "Write the shorter time first.");
        return WaitWindow.Usual;
    }

    private PieceTime? Piece(Match each)
    {
        var least = Whole(each.Groups["min"]);
        var most = each.Groups["max"].Success ? Whole(each.Groups["max"]) : least;
        if (least > 0 && least <= most && most <= _longest)
            return new(least, most);
        _problems.Add(
            _line,
            $"One piece takes `{each.Value}`",
            least > most ? "Write the shorter time first." : $"Write at least one minute, and no more than the {_longest} of the step."
        );
        return null;
    }

    private Temperature? Degrees(string text)
    {
        if (Temperature is not null)
            _problems.Add(_line, $"The brackets hold a second temperature, `{text}`", "A step has one: split it where the heat changes.");
        return Dimensions.Temperature.Read(new(text, _line), "The temperature", Dimensions.KitchenDegrees, _problems);
    }

    private static int Whole(Group digits) => digits.Success ? int.Parse(digits.Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^wait\s+(up\s+to\s+|(?<min>[0-9]{1,3})\s*[–-]\s*)(?<max>[0-9]{1,3})\s*min$", RegexOptions.IgnoreCase)]
    private static partial Regex Waiting();

    [GeneratedRegex(@"^each\s+(?<min>[0-9]{1,3})(\s*[–-]\s*(?<max>[0-9]{1,3}))?\s*min$", RegexOptions.IgnoreCase)]
    private static partial Regex OneByOne();

    [GeneratedRegex(@"^(?<how>warms|melts|tempers|cooks|boils)\s+(?<what>\S.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Heating();
}
