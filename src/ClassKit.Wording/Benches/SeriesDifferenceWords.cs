using System.Diagnostics;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Benches;

/// <summary>In what a bench plan treats members of a series unlike each other.</summary>
public static class SeriesDifferenceWords
{
    /// <summary>What is asked of whoever compares what was not treated alike.</summary>
    public const string Caution =
        "What differs in the breads may come of this and not of what the series changes: say so where they are compared.";

    /// <summary>
    /// One difference as a sentence that names the members: <c>“Bake” takes 20 min for the Muffin, 22 min for the Muffin: old powder.</c>
    /// </summary>
    /// <param name="difference">The difference.</param>
    /// <param name="bench">The class that was planned.</param>
    public static string Of(SeriesDifference difference, BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return difference switch
        {
            SeriesDifference.Ovens(_, var members) => $"{Ovens(members, bench)}.",
            SeriesDifference.Beginnings(_, var step, var times) => $"“{step}” begins at {Grouped(times, bench, Clock)}.",
            SeriesDifference.Lengths(_, var step, var times) => $"“{step}” takes {Grouped(times, bench, Minutes)}.",
            SeriesDifference.Waits(_, var after, var before, var times) =>
                $"Between “{after}” and “{before}” pass {Grouped(times, bench, Minutes)}.",
            _ => throw new UnreachableException($"No words for {difference}."),
        };
    }

    /// <summary>All differences of a plan in one text; empty without any.</summary>
    public static string Of(IReadOnlyList<SeriesDifference> differences, BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(differences);
        return differences.Count == 0
            ? ""
            : $"Not all is alike in the bench plan that the series holds against each other. {string.Join(' ', differences.Select(difference => Of(difference, bench)))} {Caution}";
    }

    private static string Ovens(IReadOnlyList<SeriesOvens> members, BenchClass bench)
    {
        var ovens = members
            .SelectMany(member => member.Ovens.Select(oven => (Oven: oven, Name: bench.Breads[member.Bread].Name)))
            .GroupBy(each => each.Oven, each => each.Name)
            .OrderBy(oven => oven.Key)
            .Select(oven => FormattableString.Invariant($"in oven {oven.Key} {Phrases.List([.. oven])}"));
        return $"Not one oven bakes all: {string.Join("; ", ovens)}";
    }

    private static string Grouped(IReadOnlyList<SeriesMinutes> times, BenchClass bench, Func<int, int, string> words) =>
        string.Join(
            "; ",
            times
                .GroupBy(time => (time.Least, time.Most), time => bench.Breads[time.Bread].Name)
                .OrderBy(group => group.Key)
                .Select(group => $"{words(group.Key.Least, group.Key.Most)} for {Phrases.List([.. group])}")
        );

    private static string Minutes(int least, int most) =>
        least == most ? FormattableString.Invariant($"{least} min") : FormattableString.Invariant($"{least} to {most} min");

    private static string Clock(int least, int most) =>
        least == most ? NumberText.Clock(least) : $"{NumberText.Clock(least)} to {NumberText.Clock(most)}";
}
