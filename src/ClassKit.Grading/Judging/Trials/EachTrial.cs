using System.Collections;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>
/// Makes something for every trial, in an array that is as long as they are many: it is done some hundred thousand times for a class.
/// </summary>
internal static class EachTrial
{
    /// <summary>One for every trial.</summary>
    public static TMade[] Of<TMade>(IReadOnlyList<Trial> trials, Func<Trial, TMade> make)
    {
        var made = new TMade[trials.Count];
        for (var at = 0; at < made.Length; at++)
            made[at] = make(trials[at]);
        return made;
    }

    /// <summary>The same for one who asks for the trial's place.</summary>
    public static TMade[] Of<TMade>(IReadOnlyList<Trial> trials, Func<Trial, int, TMade> make)
    {
        var made = new TMade[trials.Count];
        for (var at = 0; at < made.Length; at++)
            made[at] = make(trials[at], at);
        return made;
    }

    /// <summary>One for every trial, looked up when somebody asks: most answers are right, and nobody does.</summary>
    public static IReadOnlyList<TFound> WhenAsked<TFound>(IReadOnlyList<Trial> trials, Func<Trial, TFound> find) =>
        new Asked<TFound>(trials, find);

    private sealed class Asked<TFound>(IReadOnlyList<Trial> trials, Func<Trial, TFound> find) : IReadOnlyList<TFound>
    {
        public int Count => trials.Count;

        public TFound this[int index] => find(trials[index]);

        public IEnumerator<TFound> GetEnumerator() => trials.Select(find).GetEnumerator();

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
