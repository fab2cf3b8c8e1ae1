using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Randomness;

namespace ClassKit.Exercises.Choosing;

/// <summary>
/// Chooses different sets of equal weight: as many exercises of each skill and level, the same points, and nearly the same minutes.
/// </summary>
/// <remarks>
/// One set is chosen as for everyone; the others exchange its exercises for others of the same skill and level. Exercises wanted by name
/// stay in every set.
/// </remarks>
public static class SpreadChooser
{
    /// <summary>How far a set's minutes may be from those of the first, as a share of them.</summary>
    public const double MinutesApart = 0.1;

    /// <summary>How far the points that can be expected of two sets may be from each other, as a share of the points.</summary>
    public const double ExpectedApart = 0.04;

    /// <summary>More sets than this would leave too few students on each exercise to say how it went.</summary>
    public const int MostSets = 24;

    private const int Tries = 4000;

    /// <summary>Chooses a set for every student; the same arguments give the same sets.</summary>
    /// <param name="pool">Every exercise that may be chosen, ids unique.</param>
    /// <param name="wish">What is wanted of each set; the exercises named must be in the pool.</param>
    /// <param name="students">Whom the sets are for, at least one.</param>
    /// <param name="seed">Decides which sets, and who gets which.</param>
    /// <param name="expected">What a student can be expected to earn with each exercise of which enough is known, by its id: sets are
    /// balanced by it where that is every exercise that can be in one. Null where nobody asked.</param>
    /// <returns>Null if no exercise fits the wish.</returns>
    public static Spread? Choose(
        IReadOnlyList<Exercise> pool,
        SetWish wish,
        IReadOnlyList<Student> students,
        ulong seed,
        IReadOnlyDictionary<string, double>? expected = null
    )
    {
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(students);
        var first = SetChooser.Choose(pool, wish, seed);
        if (first.Count == 0)
            return null;
        var random = SeededDraws.For(seed, "spread");
        var notKnown = expected is null
            ? []
            : pool.Where(exercise =>
                    !expected.ContainsKey(exercise.Id)
                    && (first.Contains(exercise) || (SetChooser.Fits(exercise, wish) && first.Any(one => KindOf(one) == KindOf(exercise))))
                )
                .ToList();
        var balance = notKnown.Count > 0 ? null : expected;
        var sets = Find(pool, wish, first, Math.Min(students.Count, MostSets), random, balance);
        return Of(HandOut(sets, students, []), pool) with
        {
            NotKnown = notKnown,
            ExpectedApart = balance is null ? null : sets.Max(set => Expected(set, balance)) - sets.Min(set => Expected(set, balance)),
        };
    }

    /// <summary>Gives sets of an earlier deal to students who came since; the others keep theirs.</summary>
    /// <param name="before">The earlier deal, of exercises that are all in the pool.</param>
    /// <param name="pool">The exercises as they are now.</param>
    /// <param name="students">All of them, old and new.</param>
    public static Spread Extend(DealtClass before, IReadOnlyList<Exercise> pool, IReadOnlyList<Student> students)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentNullException.ThrowIfNull(students);
        var exercises = before.Exercises.Select(dealt => pool.First(exercise => exercise.Id == dealt.Id)).ToList();
        var sets = new Dictionary<string, IReadOnlyList<Exercise>>();
        var kept = new Dictionary<string, IReadOnlyList<Exercise>>();
        foreach (var student in before.Students)
        {
            List<Exercise> set = [.. before.ExercisesOf(student).Select(dealt => exercises.Find(exercise => exercise.Id == dealt.Id)!)];
            sets.TryAdd(NameOf(set), set);
            kept[student.Who.Id] = sets[NameOf(set)];
        }
        return Of(HandOut([.. sets.Values], students, kept), exercises);
    }

    private static Spread Of(Dictionary<string, IReadOnlyList<Exercise>> dealt, IReadOnlyList<Exercise> pool)
    {
        var used = dealt.Values.SelectMany(set => set).ToHashSet();
        return new(
            dealt.ToDictionary(set => set.Key, set => (IReadOnlyList<string>)[.. set.Value.Select(exercise => exercise.Id)]),
            [.. pool.Where(used.Contains)],
            dealt.Values.Distinct().Count(),
            dealt.Values.First().Sum(SetChooser.PointsOf),
            dealt.Values.Min(MinutesOf),
            dealt.Values.Max(MinutesOf)
        );
    }

    /// <summary>The first set, and others drawn at random as long as new ones come up.</summary>
    private static List<IReadOnlyList<Exercise>> Find(
        IReadOnlyList<Exercise> pool,
        SetWish wish,
        IReadOnlyList<Exercise> first,
        int most,
        SeededDraws random,
        IReadOnlyDictionary<string, double>? expected
    )
    {
        var named = first.Where(exercise => wish.Exercises.Contains(exercise.Id)).ToList();
        var kinds = first
            .Except(named)
            .GroupBy(KindOf)
            .Select(kind =>
                (
                    Count: kind.Count(),
                    Fitting: pool.Where(exercise =>
                            KindOf(exercise) == kind.Key && SetChooser.Fits(exercise, wish) && !named.Contains(exercise)
                        )
                        .ToList()
                )
            )
            .ToList();
        var found = new Dictionary<string, IReadOnlyList<Exercise>> { [NameOf(first)] = first };
        for (var attempt = 0; attempt < Tries && found.Count < most; attempt++)
        {
            var set = pool.Intersect([.. named, .. kinds.SelectMany(kind => SetChooser.Shuffled(kind.Fitting, random).Take(kind.Count))])
                .ToList();
            if (IsEqual(set, first, wish) && IsAsHard(set, first, expected))
                found.TryAdd(NameOf(set), set);
        }
        return [.. found.Values];
    }

    private static bool IsEqual(IReadOnlyList<Exercise> set, IReadOnlyList<Exercise> first, SetWish wish) =>
        set.Sum(SetChooser.PointsOf) == first.Sum(SetChooser.PointsOf)
        && Math.Abs(MinutesOf(set) - MinutesOf(first)) <= MinutesApart * MinutesOf(first)
        && MinutesOf(set) <= (wish.Minutes ?? int.MaxValue);

    private static bool IsAsHard(
        IReadOnlyList<Exercise> set,
        IReadOnlyList<Exercise> first,
        IReadOnlyDictionary<string, double>? expected
    ) =>
        expected is null
        || Math.Abs(Expected(set, expected) - Expected(first, expected)) <= ExpectedApart / 2 * (double)first.Sum(SetChooser.PointsOf);

    private static double Expected(IReadOnlyList<Exercise> set, IReadOnlyDictionary<string, double> expected) =>
        set.Sum(exercise => expected[exercise.Id]);

    /// <summary>
    /// Every set as often as any other, give or take one; the next is the one whose exercises fewest students have. Who has one keeps it.
    /// </summary>
    private static Dictionary<string, IReadOnlyList<Exercise>> HandOut(
        List<IReadOnlyList<Exercise>> sets,
        IReadOnlyList<Student> students,
        Dictionary<string, IReadOnlyList<Exercise>> kept
    )
    {
        var times = sets.ToDictionary(set => set, _ => 0);
        var uses = sets.SelectMany(set => set).Distinct().ToDictionary(exercise => exercise, _ => 0);
        var dealt = new Dictionary<string, IReadOnlyList<Exercise>>();
        foreach (var student in students.OrderBy(student => !kept.ContainsKey(student.Id)))
        {
            var next = kept.GetValueOrDefault(student.Id) ?? sets.MinBy(set => (times[set], set.Sum(exercise => uses[exercise])))!;
            dealt[student.Id] = next;
            times[next]++;
            foreach (var exercise in next)
                uses[exercise]++;
        }
        return dealt;
    }

    private static (string Skill, ExerciseLevel Level) KindOf(Exercise exercise) => (exercise.Skill, exercise.Level);

    private static int MinutesOf(IReadOnlyList<Exercise> set) => set.Sum(exercise => exercise.Minutes);

    private static string NameOf(IReadOnlyList<Exercise> set) =>
        string.Join(' ', set.Select(exercise => exercise.Id).Order(StringComparer.Ordinal));
}
