using ClassKit.Baking.Cooking;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cooking;

namespace ClassKit.Content.Lessons;

/// <summary>What a step's brackets come to together: a temperature, and what the step takes at the bench.</summary>
/// <param name="Way">What it is cooked in or over; null on the bench.</param>
/// <param name="Each">How long one piece takes; null where nothing says so.</param>
/// <param name="Temperature">At which it happens; null where nothing says so.</param>
/// <param name="Work">What it takes at the bench.</param>
internal sealed record StepConditions(CookingWay? Way, PieceTime? Each, Temperature? Temperature, StepWork Work)
{
    /// <summary>Reads each, and then puts them together.</summary>
    /// <param name="conditions">What stands behind the duration, one by one.</param>
    /// <param name="longest">The minutes that the step takes at most.</param>
    /// <param name="line">Where it stands.</param>
    /// <param name="problems">Takes what cannot be read, and what does not go together.</param>
    public static StepConditions Read(IEnumerable<string> conditions, int longest, int line, ProblemList problems)
    {
        var reader = new StepConditionReader(longest, line, problems);
        return Together([.. conditions.Select(reader.Read).OfType<StepCondition>()], line, problems);
    }

    private static StepConditions Together(IReadOnlyList<StepCondition> read, int line, ProblemList problems)
    {
        var place = Only<StepCondition.CookedIn>(
            read,
            more =>
                ($"The brackets hold `{more.Written}` as well", "A step is cooked in one thing: split it where the bread changes over."),
            line,
            problems
        )?.Place;
        var people = Only<StepCondition.Staffed>(
            read,
            more =>
                (
                    $"The brackets hold `{more.Written}` as well",
                    $"Say once how many people it takes, or `{StepConditionReader.Unattended}`."
                ),
            line,
            problems
        )?.People;
        var places = read.OfType<StepCondition.Places>().LastOrDefault();
        var work = read.OfType<StepCondition.Said>().Aggregate(StepWork.Usual, (so, said) => said.Of(so));
        NoteContradictions(place, people, places, work, line, problems);

        // The oven of the bake is asked for its own places alone: those of a steamer before it are the steamer's.
        var ovenPlaces = place is null or { Kind: null } ? places?.Count : null;
        return new(
            place?.Way,
            read.OfType<StepCondition.OneByOne>().LastOrDefault()?.Time,
            Degrees(read, line, problems),
            work with
            {
                People = people ?? (place is null || place.IsWatched ? 1 : 0),
                Wait = read.OfType<StepCondition.Waits>().LastOrDefault()?.Window ?? work.Wait,
                Uses =
                [
                    .. read.OfType<StepCondition.Occupies>().Select(use => use.Count),
                    .. place?.Kind is { } kind ? [new(kind, places?.Count ?? 1)] : Array.Empty<EquipmentCount>(),
                ],
                Heats = [.. read.OfType<StepCondition.Heats>().Select(heats => heats.Heat)],
                OvenPlaces = ovenPlaces ?? work.OvenPlaces,
                StatesOvenPlaces = ovenPlaces is not null,
            }
        );
    }

    private static void NoteContradictions(
        CookingPlace? place,
        int? people,
        StepCondition.Places? places,
        StepWork work,
        int line,
        ProblemList problems
    )
    {
        if (place is { IsWatched: true } && people == 0)
            problems.Add(
                line,
                $"The brackets say `{StepConditionReader.Unattended}` of a {place.Name}",
                "Somebody stands by all the time: leave the word out, or write how many: `2 people`."
            );
        if (places is { Of: { Kind: not null } of } && place is null)
            problems.Add(
                line,
                $"The brackets name places of a {of.Name} and not that the bread is cooked in one",
                $"Write both: `{of.Name}, {places.Count} {of.Name} places`."
            );
        else if (places is { Of: { } other } && place is not null && other != place)
            problems.Add(
                line,
                $"The brackets name places of one thing, `{other.Name}`, and cook in another, `{place.Name}`",
                $"Write the places of what it is cooked in: `{place.Name}, {places.Count} {place.Name} places`."
            );
        if (work.Reheats && place is null)
            problems.Add(
                line,
                $"The brackets say `{StepConditionReader.Reheats}` and nothing heats",
                "Write what it is heated in as well: `combi oven 160 °C, reheats`."
            );
    }

    /// <summary>The heat of what it is cooked in, or how warm it is; what stands there besides is too much.</summary>
    private static Temperature? Degrees(IReadOnlyList<StepCondition> read, int line, ProblemList problems)
    {
        Temperature? degrees = null;
        foreach (var condition in read)
        {
            if (condition is StepCondition.CookedIn { Heat: not null, Place.HasHeat: false } alone)
                problems.Add(line, $"The brackets hold `{alone.Written}`", $"Write `{alone.Place.Name}` alone: it is as hot as it is.");
            var text = condition switch
            {
                StepCondition.CookedIn cooked => cooked.Heat,
                StepCondition.Degrees => condition.Written,
                _ => null,
            };
            if (text is null)
                continue;
            if (degrees is not null)
                problems.Add(line, $"The brackets hold a second temperature, `{text}`", "A step has one: split it where the heat changes.");
            degrees = Dimensions.Temperature.Read(new(text, line), "The temperature", Dimensions.KitchenDegrees, problems) ?? degrees;
        }
        return degrees;
    }

    /// <summary>The first of a kind that a step may have once; every further one is told of.</summary>
    private static T? Only<T>(
        IReadOnlyList<StepCondition> read,
        Func<T, (string Found, string Expected)> tooMany,
        int line,
        ProblemList problems
    )
        where T : StepCondition
    {
        List<T> all = [.. read.OfType<T>()];
        foreach (var (found, expected) in all.Skip(1).Select(tooMany))
            problems.Add(line, found, expected);
        return all is [var first, ..] ? first : null;
    }
}
