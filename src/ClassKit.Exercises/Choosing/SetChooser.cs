using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Randomness;

namespace ClassKit.Exercises.Choosing;

/// <summary>Chooses the exercises of a set from a pool.</summary>
public static class SetChooser
{
    /// <summary>Enough different orders to try that a better filling is seldom missed; the whole bank takes milliseconds.</summary>
    private const int Tries = 300;

    /// <summary>Chooses; the same pool, wish and seed give the same set.</summary>
    /// <param name="pool">Every exercise that may be chosen, ids unique.</param>
    /// <param name="wish">What is wanted; the exercises named must be in the pool.</param>
    /// <param name="seed">Decides among sets that fulfil the wish equally well.</param>
    /// <returns>The set: the exercises named, then the others in the pool's order; empty if none fits.</returns>
    public static IReadOnlyList<Exercise> Choose(IReadOnlyList<Exercise> pool, SetWish wish, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentNullException.ThrowIfNull(wish);
        List<Exercise> named = [.. wish.Exercises.Select(id => pool.Single(exercise => exercise.Id == id))];
        if (wish.IsByName)
            return wish.IsNone ? pool : named;
        List<Exercise> fitting = [.. pool.Where(exercise => !named.Contains(exercise) && Fits(exercise, wish))];
        var chosen = wish.Minutes is null && wish.Points is null ? fitting : Filled(named, fitting, wish, seed);
        return [.. named, .. fitting.Where(chosen.Contains)];
    }

    /// <summary>Points of all parts together.</summary>
    public static decimal PointsOf(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise.Parts.Sum(part => part.Points);
    }

    internal static bool Fits(Exercise exercise, SetWish wish) =>
        (wish.Skills.Count == 0 || wish.Skills.Contains(exercise.Skill, StringComparer.OrdinalIgnoreCase))
        && (wish.Levels.Count == 0 || wish.Levels.Contains(exercise.Level));

    /// <summary>The fullest of many sets, each filled in an order of its own; of equally full ones the one with the most skills.</summary>
    private static List<Exercise> Filled(List<Exercise> named, List<Exercise> fitting, SetWish wish, ulong seed)
    {
        var random = SeededDraws.For(seed, "set");
        var best = new List<Exercise>();
        var (bestFilled, bestSkills) = (-1.0, 0);
        for (var attempt = 0; attempt < Tries; attempt++)
        {
            var chosen = Fill(named, Shuffled(fitting, random), wish);
            var filled = FilledShare(named, chosen, wish);
            var skills = chosen.Select(exercise => exercise.Skill).Distinct().Count();
            if ((filled, skills).CompareTo((bestFilled, bestSkills)) <= 0)
                continue;
            (best, bestFilled, bestSkills) = (chosen, filled, skills);
        }
        return best;
    }

    private static List<Exercise> Fill(List<Exercise> named, List<Exercise> inOrder, SetWish wish)
    {
        var minutes = named.Sum(exercise => exercise.Minutes);
        var points = named.Sum(PointsOf);
        var chosen = new List<Exercise>();
        foreach (var exercise in inOrder)
        {
            if (
                minutes + exercise.Minutes > (wish.Minutes ?? int.MaxValue)
                || points + PointsOf(exercise) > (wish.Points ?? decimal.MaxValue)
            )
                continue;
            minutes += exercise.Minutes;
            points += PointsOf(exercise);
            chosen.Add(exercise);
        }
        return chosen;
    }

    private static double FilledShare(List<Exercise> named, List<Exercise> chosen, SetWish wish) =>
        (wish.Minutes is { } minutes ? named.Concat(chosen).Sum(exercise => exercise.Minutes) / (double)minutes : 0)
        + (wish.Points is { } points ? (double)(named.Concat(chosen).Sum(PointsOf) / points) : 0);

    /// <summary>Fisher and Yates's shuffle.</summary>
    internal static List<Exercise> Shuffled(IReadOnlyList<Exercise> exercises, SeededDraws random)
    {
        List<Exercise> shuffled = [.. exercises];
        for (var last = shuffled.Count - 1; last > 0; last--)
        {
            var other = random.Below(last + 1);
            (shuffled[last], shuffled[other]) = (shuffled[other], shuffled[last]);
        }
        return shuffled;
    }
}
