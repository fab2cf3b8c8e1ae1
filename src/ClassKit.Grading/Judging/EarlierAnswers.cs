using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>What is known of the answers before one part.</summary>
internal sealed class EarlierAnswers
{
    private readonly Part _part;
    private readonly IReadOnlyDictionary<string, JudgedAnswer> _judged;

    /// <param name="part">The part that comes after them.</param>
    /// <param name="exercise">Its exercise.</param>
    /// <param name="judged">Every earlier part by its id.</param>
    public EarlierAnswers(Part part, Exercise exercise, IReadOnlyDictionary<string, JudgedAnswer> judged)
    {
        (_part, _judged) = (part, judged);
        Parts = [.. exercise.Parts.TakeWhile(other => other != part)];
    }

    /// <summary>All parts before it.</summary>
    public IReadOnlyList<Part> Parts { get; }

    /// <summary>How the cells of the earlier parts are read.</summary>
    public IReadOnlyDictionary<Part, Reading?> Readings => Parts.ToDictionary(before => before, before => _judged[before.Id].Judgement.Reading);

    /// <summary>The earlier parts that do not follow the inputs: typed, blank, broken or no number under some of them.</summary>
    public IReadOnlyDictionary<Part, Reading?> Unreached =>
        Parts.Where(before => !_judged[before.Id].IsReached).ToDictionary(before => before, before => _judged[before.Id].Judgement.Reading);

    /// <summary>True if every earlier part that the key builds on has the right number.</summary>
    public bool AreRight => Used.All(before => _judged[before.Id].Judgement.IsRightNumber);

    /// <summary>Those that the key builds on and whose cells hold something wrong, if only a percentage a hundred times too large.</summary>
    public IReadOnlyList<Part> Wrong =>
        [.. Used.Where(before => _judged[before.Id].Judgement is { Reading: not null } judgement && (!judgement.IsRightNumber || judgement.Reading.IsScaled))];

    /// <summary>Those that the key builds on and in whose cells no number stands.</summary>
    public IReadOnlyList<Part> WithoutNumber => [.. Used.Where(before => !_judged[before.Id].HoldsNumber)];

    /// <summary>The parts in which what is wrong or missing before this part was counted, and not those that only carry it on.</summary>
    public IReadOnlyList<Part> Origins => [.. Parts.Where(before => Wrong.Concat(WithoutNumber).Any(used => _judged[used.Id].Origins.Contains(before)))];

    /// <summary>Those of <see cref="Origins"/> in whose cells no number stands.</summary>
    public IReadOnlyList<Part> OriginsWithoutNumber => [.. Origins.Where(before => !_judged[before.Id].HoldsNumber)];

    /// <summary>True if the wrong ones are answers that somebody worked out, and not a 0, a 1 or a number copied from the sheet.</summary>
    public bool AreTelling => Wrong.All(before => _judged[before.Id].IsTelling);

    private IEnumerable<Part> Used => Parts.Where(before => _part.Key.Names.Contains(before.Id, StringComparer.OrdinalIgnoreCase));
}
