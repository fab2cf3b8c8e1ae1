namespace ClassKit.Tests;

/// <summary>
/// How much of what can be tried without end is tried: a share in an ordinary run, all of it where CLASSKIT_TRIALS is `all`.
/// </summary>
/// <remarks>
/// The share is the same each time, so that a run can be repeated; what differs in kind is always tried, what differs in number alone is
/// what a share is taken of.
/// </remarks>
internal static class Trials
{
    /// <summary>Whether everything is tried, however long it takes.</summary>
    public static bool All { get; } = Environment.GetEnvironmentVariable("CLASSKIT_TRIALS") == "all";

    /// <summary>So many of them, or one part in <paramref name="share"/> of so many.</summary>
    public static int Of(int all, int share) => All ? all : Math.Max(1, all / share);

    /// <summary>
    /// Every <paramref name="nth"/> of them, beginning somewhere among the first ones, so that several who take shares of the same list
    /// take different ones and together all.
    /// </summary>
    public static IEnumerable<T> Some<T>(IEnumerable<T> all, int nth, int beginning = 0) =>
        All ? all : all.Where((_, at) => at % nth == beginning % nth);

    /// <summary>A number that a name gives in every run: where its share of a list begins.</summary>
    public static int Beginning(string name) => name.Aggregate(0, (sum, letter) => (sum * 31 + letter) % 65_521);
}
