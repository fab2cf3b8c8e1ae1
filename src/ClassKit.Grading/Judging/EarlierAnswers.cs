using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Judging.Trials;

namespace ClassKit.Grading.Judging;

/// <summary>What is known of the answers before one part.</summary>
internal sealed class EarlierAnswers
{
    private readonly IReadOnlyDictionary<string, JudgedAnswer> _judged;

    /// <param name="part">The part that comes after them.</param>
    /// <param name="exercise">Its exercise.</param>
    /// <param name="judged">Every earlier part by its id.</param>
    public EarlierAnswers(Part part, Exercise exercise, IReadOnlyDictionary<string, JudgedAnswer> judged)
    {
        _judged = judged;
        Parts = [.. exercise.Parts.TakeWhile(other => other != part)];
        List<Part> used = [.. Parts.Where(before => part.Key.Names.Contains(before.Id, StringComparer.OrdinalIgnoreCase))];
        AreRight = used.TrueForAll(before => judged[before.Id].Judgement.IsRightNumber);
        Wrong =
        [
            .. used.Where(before =>
                judged[before.Id].Judgement is { Reading: not null } judgement && (!judgement.IsRightNumber || judgement.Reading.IsScaled)
            ),
        ];
        WithoutNumber = [.. used.Where(before => !judged[before.Id].HoldsNumber)];
    }

    /// <summary>All parts before it.</summary>
    public IReadOnlyList<Part> Parts { get; }

    /// <summary>True if every earlier part that the key builds on has the right number.</summary>
    public bool AreRight { get; }

    /// <summary>
    /// Those that the key builds on and whose cells hold something wrong, if only a percentage a hundred times too large.
    /// </summary>
    public IReadOnlyList<Part> Wrong { get; }

    /// <summary>Those that the key builds on and in whose cells no number stands.</summary>
    public IReadOnlyList<Part> WithoutNumber { get; }

    /// <summary>How the cells of the earlier parts are read.</summary>
    public IReadOnlyDictionary<Part, Reading?> Readings => ReadingsOf(Parts);

    /// <summary>The earlier parts that do not follow the inputs: typed, blank, broken or no number under some of them.</summary>
    public IReadOnlyDictionary<Part, Reading?> Unreached => ReadingsOf(Parts.Where(before => !_judged[before.Id].IsReached));

    /// <summary>The parts in which what is wrong or missing before this part was counted, and not those that only carry it on.</summary>
    public IReadOnlyList<Part> Origins =>
        [.. Parts.Where(before => Wrong.Concat(WithoutNumber).Any(used => _judged[used.Id].Origins.Contains(before)))];

    /// <summary>Those of <see cref="Origins"/> in whose cells no number stands.</summary>
    public IReadOnlyList<Part> OriginsWithoutNumber => [.. Origins.Where(before => !_judged[before.Id].HoldsNumber)];

    /// <summary>The parts in which what is wrong with the answers that are used was counted.</summary>
    /// <param name="isUsed">True of an earlier part whose answer is used.</param>
    public IReadOnlyList<Part> OriginsBehind(Func<Part, bool> isUsed)
    {
        var used = Parts.Where(before => isUsed(before) && !_judged[before.Id].Judgement.IsRightNumber).ToList();
        return [.. Parts.Where(before => used.Exists(one => _judged[one.Id].Origins.Contains(before)))];
    }

    /// <summary>The parts before it that ask for a number, whose answers are used, and in whose cells none stands that is right.</summary>
    /// <param name="isUsed">True of an earlier part whose answer is used.</param>
    public IReadOnlyList<Part> NotRight(Func<Part, bool> isUsed) =>
        [
            .. Parts.Where(before =>
                before.IsNumber
                && isUsed(before)
                && _judged[before.Id].Judgement is var judgement
                && (!judgement.IsRightNumber || judgement.Reading is null or { IsScaled: true })
            ),
        ];

    /// <summary>True if a part's cell holds a number that other cells compute with.</summary>
    public bool HoldsNumber(Part before) => _judged[before.Id].HoldsNumber;

    /// <summary>True if the wrong ones are answers that somebody worked out, and not a 0, a 1 or a number copied from the sheet.</summary>
    public bool AreTelling => !NotTelling.Any();

    /// <summary>The wrong ones that are a 0, a 1 or a number copied from the sheet.</summary>
    public IEnumerable<Part> NotTelling => Wrong.Where(before => !_judged[before.Id].IsTelling);

    private Dictionary<Part, Reading?> ReadingsOf(IEnumerable<Part> parts) =>
        parts.ToDictionary(part => part, part => _judged[part.Id].Judgement.Reading);
}
