namespace ClassKit.Grading.Integrity;

/// <summary>The pairs of a class whose texts in common could together be as rare as a line asks; every such pair is among them.</summary>
/// <remarks>
/// A student's texts are put in the order of their rarity. The rarest that a pair has in common bounds the rest: together they are no rarer
/// than it and all that follow it. Those who wrote a text are looked up only while that bound can pass the line, which common texts of
/// themselves never do.
/// </remarks>
internal sealed class RarePairs
{
    private readonly List<List<((string Exercise, string Part) Part, string Text)>> _byRarity;
    private readonly Func<((string Exercise, string Part) Part, string Text), double> _chance;
    private readonly double _line;

    /// <param name="written">What every student wrote, by part.</param>
    /// <param name="chance">How likely it is that a pair has a text in common.</param>
    /// <param name="line">The greatest product of such chances that is looked for.</param>
    public RarePairs(
        IReadOnlyList<Dictionary<(string Exercise, string Part), string>> written,
        Func<((string Exercise, string Part) Part, string Text), double> chance,
        double line
    )
    {
        // Room for the last bits of a product of doubles.
        const double slack = 1 + 1e-9;
        (_chance, _line) = (chance, line * slack);
        var wrote = written
            .SelectMany(student => student.Select(one => (one.Key, one.Value)))
            .CountBy(one => one)
            .Where(one => one.Value > 1)
            .Select(one => one.Key)
            .ToHashSet();
        _byRarity =
        [
            .. written.Select(student =>
                student.Select(one => (one.Key, one.Value)).Where(wrote.Contains).OrderBy(one => chance(one)).ToList()
            ),
        ];
    }

    /// <summary>The places of both students, each pair once, the earlier student first, in the order of the class.</summary>
    public IEnumerable<(int One, int Other)> All()
    {
        var writers = new Dictionary<((string Exercise, string Part) Part, string Text), List<int>>();
        for (var student = 0; student < _byRarity.Count; student++)
        {
            foreach (var text in _byRarity[student])
            {
                if (!writers.TryGetValue(text, out var own))
                    writers[text] = own = [];
                own.Add(student);
            }
        }

        for (var student = 0; student < _byRarity.Count; student++)
        {
            foreach (
                var other in Telling(_byRarity[student])
                    .SelectMany(text => writers[text].Where(other => other > student))
                    .Distinct()
                    .Order()
            )
                yield return (student, other);
        }
    }

    /// <summary>The texts that, with all more common ones, could pass the line.</summary>
    private IEnumerable<((string Exercise, string Part) Part, string Text)> Telling(
        List<((string Exercise, string Part) Part, string Text)> texts
    )
    {
        var rest = texts.Aggregate(1.0, (product, text) => product * _chance(text));
        foreach (var text in texts)
        {
            if (rest > _line)
                yield break;
            yield return text;
            rest /= _chance(text);
        }
    }
}
