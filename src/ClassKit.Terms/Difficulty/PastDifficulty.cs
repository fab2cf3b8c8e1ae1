namespace ClassKit.Terms.Difficulty;

/// <summary>How hard everything proved that classes were ever asked, by a Rasch model, and what that says of a set to come.</summary>
public sealed class PastDifficulty
{
    private readonly Dictionary<AskedPart, PartDifficulty> _parts;
    private readonly List<Dictionary<string, AbilitySpread>> _classes = [];
    private readonly List<AbilitySpread> _everybody = [];
    private readonly double _got,
        _missed;

    private PastDifficulty(IReadOnlyList<PastWork> works)
    {
        Works = works.Count;
        Classes = works.Select(work => work.Class).Distinct().Count();
        var answers = works.SelectMany(work => work.Answers).ToLookup(answer => answer.IsGot);
        _got = answers[true].Select(answer => answer.Share).DefaultIfEmpty(1).Average();
        _missed = answers[false].Select(answer => answer.Share).DefaultIfEmpty(0).Average();
        var asked = works
            .SelectMany(work => work.Answers)
            .GroupBy(answer => answer.Part)
            .ToDictionary(part => part.Key, part => part.ToList());
        List<AskedPart> names = [.. asked.Keys];
        var places = names.Index().ToDictionary(part => part.Item, part => part.Index);
        var rows = works
            .Select(work =>
                (
                    work.Class,
                    Answers: (IReadOnlyList<(int Part, bool Got)>)[.. work.Answers.Select(answer => (places[answer.Part], answer.IsGot))]
                )
            )
            .ToList();
        var estimates = new Dictionary<int, (int Scale, double Difficulty, double Error)>();
        foreach (var (number, scale) in ComparableParts.Of(rows.Select(row => row.Answers), names.Count).Index())
        {
            foreach (var (at, (difficulty, error)) in Estimate(scale, rows).Index())
                estimates[scale[at]] = (number, difficulty, error);
        }
        var askedIn = works
            .SelectMany(work => work.Answers.Select(answer => (answer.Part, Work: work)))
            .ToLookup(pair => pair.Part, pair => pair.Work);
        _parts = asked.ToDictionary(
            part => part.Key,
            part =>
                Made(part.Key, part.Value, estimates.TryGetValue(places[part.Key], out var estimate) ? estimate : null, askedIn[part.Key])
        );
    }

    /// <summary>How many works it rests on.</summary>
    public int Works { get; }

    /// <summary>Of how many classes.</summary>
    public int Classes { get; }

    /// <summary>Estimates everything.</summary>
    /// <param name="works">All works of all classes; may be none.</param>
    public static PastDifficulty Of(IReadOnlyList<PastWork> works)
    {
        ArgumentNullException.ThrowIfNull(works);
        return new(works);
    }

    /// <summary>How a part proved; null if nobody was asked it.</summary>
    public PartDifficulty? Of(AskedPart part) => _parts.GetValueOrDefault(part);

    /// <summary>How able those are who did all works of a scale.</summary>
    public AbilitySpread Everybody(int scale) => _everybody[scale];

    /// <summary>What a class can be expected to earn with a set on average.</summary>
    /// <param name="set">The parts and their points.</param>
    /// <param name="named">What the class is called: where it did works on a scale before, they say how able it is; otherwise those of all
    /// who did.</param>
    /// <param name="students">How many there are, at least one.</param>
    /// <returns>Null if nobody was asked any of the parts.</returns>
    public PointsBand? Expect(IReadOnlyList<(AskedPart Part, double Points)> set, string named, int students)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(students);
        var known = set.Where(asked => _parts.ContainsKey(asked.Part)).ToList();
        if (known.Count == 0)
            return null;
        var expected = new ExpectedPoints(_got, _missed);
        foreach (var (part, points) in known)
            expected.Add(_parts[part], points);
        var isOwn = false;
        var (low, middle, high) = expected.Band(students, scale =>
        {
            isOwn |= _classes[scale].ContainsKey(named);
            return _classes[scale].GetValueOrDefault(named) ?? Everybody(scale);
        });
        var most = known.Sum(asked => asked.Points);
        return new(Math.Clamp(low, 0, most), middle, Math.Clamp(high, 0, most), most, set.Sum(asked => asked.Points) - most, isOwn);
    }

    /// <summary>Difficulties of one scale, with who did its works.</summary>
    private List<(double Difficulty, double Error)> Estimate(
        IReadOnlyList<int> scale,
        IReadOnlyList<(string Class, IReadOnlyList<(int Part, bool Got)> Answers)> rows
    )
    {
        var places = scale.Index().ToDictionary(part => part.Item, part => part.Index);
        var own = rows.Select(row =>
                (
                    row.Class,
                    Answers: (IReadOnlyList<(int Part, bool Got)>)
                        [
                            .. row
                                .Answers.Where(answer => places.ContainsKey(answer.Part))
                                .Select(answer => (places[answer.Part], answer.Got)),
                        ]
                )
            )
            .Where(row => row.Answers.Count > 0)
            .ToList();
        var (got, asked) = (new int[scale.Count], new int[scale.Count]);
        foreach (var (part, isGot) in own.SelectMany(row => row.Answers))
        {
            asked[part]++;
            if (isGot)
                got[part]++;
        }
        var all = AskedAlike.Of(own.Select(row => row.Answers));
        var estimate = ConditionalEstimate.Of(all, scale.Count, got, asked);
        _everybody.Add(AbilitySpread.Of(all, estimate.Difficulties)!);
        _classes.Add([]);
        foreach (var named in own.GroupBy(row => row.Class))
        {
            if (AbilitySpread.Of(AskedAlike.Of(named.Select(row => row.Answers)), estimate.Difficulties) is { } spread)
                _classes[^1][named.Key] = spread;
        }
        return [.. estimate.Difficulties.Zip(estimate.Errors)];
    }

    private static PartDifficulty Made(
        AskedPart part,
        List<PastAnswer> answers,
        (int Scale, double Difficulty, double Error)? estimate,
        IEnumerable<PastWork> works
    )
    {
        var got = answers.Count(answer => answer.IsGot);
        return new(part, answers.Count, got)
        {
            Scale = estimate?.Scale,
            Difficulty = estimate?.Difficulty,
            Error = estimate?.Error,
            Gap =
                estimate is not null ? null
                : got == answers.Count ? DifficultyGap.AllGot
                : got == 0 ? DifficultyGap.NobodyGot
                : DifficultyGap.NotLinked,
            Discrimination = WithinDeals.Correlation(works, part),
            WrongTurns = Commonest(answers.Select(answer => answer.WrongTurn)),
            NearMisses = Commonest(answers.Select(answer => answer.NearMiss)),
        };
    }

    private static IReadOnlyList<(string, int)> Commonest(IEnumerable<string?> met) =>
        [
            .. met.OfType<string>()
                .GroupBy(one => one, StringComparer.Ordinal)
                .Select(one => (one.Key, one.Count()))
                .OrderByDescending(one => one.Item2)
                .ThenBy(one => one.Key, StringComparer.Ordinal),
        ];
}
