using System.Collections.Concurrent;

namespace ClassKit.CellFormulas.Formulas;

/// <summary>
/// Parses formulas, each text once: a class that was dealt one sheet writes the same formulas over and over. Can be used from several
/// threads.
/// </summary>
/// <remarks>
/// It keeps so many of usual length and no more, so that a class of thousands who write no two alike takes no more room than a small one.
/// </remarks>
public sealed class FormulaParses
{
    private const int Most = 2000;
    private const int Longest = 200;

    private readonly ConcurrentDictionary<string, FormulaParse> _known = new(StringComparer.Ordinal);

    /// <summary>What <see cref="CellFormula.Parse"/> gives.</summary>
    /// <param name="text">With or without its leading <c>=</c>.</param>
    public FormulaParse Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (_known.TryGetValue(text, out var known))
            return known;
        var parse = CellFormula.Parse(text);
        if (text.Length <= Longest && _known.Count < Most)
            _known.TryAdd(text, parse);
        return parse;
    }
}
