namespace ClassKit.Terms.Difficulty;

/// <summary>How one part proved over classes.</summary>
/// <param name="Part">Which.</param>
/// <param name="Answers">How many were judged.</param>
/// <param name="Got">How many of them earned more than half of the points.</param>
public sealed record PartDifficulty(AskedPart Part, int Answers, int Got)
{
    /// <summary>
    /// The standard error, in logits, up to which a difficulty is known well enough to balance sets by: then it lies within one logit in 95
    /// of 100 cases.
    /// </summary>
    /// <remarks>
    /// Common practice; J. M. Linacre, Sample size and item calibration stability, Rasch Measurement Transactions 7 (1994), 328, from
    /// memory: 30 answers for most purposes.
    /// </remarks>
    public const double EnoughError = 1 / 1.96;

    /// <summary>Which of the scales it is on, counted from 0; null for none. Difficulties of two scales cannot be compared.</summary>
    public int? Scale { get; init; }

    /// <summary>In logits from the mean of its scale, above 0 for a hard one; null for a part on none.</summary>
    public double? Difficulty { get; init; }

    /// <summary>The standard error of the difficulty, in logits; null for a part on no scale.</summary>
    public double? Error { get; init; }

    /// <summary>Why it is on no scale; null for one that is.</summary>
    public DifficultyGap? Gap { get; init; }

    /// <summary>
    /// How much those who got it earned more of everything else, as a correlation within deals, −1 to 1; null where one of the two did not
    /// vary.
    /// </summary>
    public double? Discrimination { get; init; }

    /// <summary>The misconceptions that were met, the commonest first.</summary>
    public IReadOnlyList<(string WrongTurn, int Times)> WrongTurns { get; init; } = [];

    /// <summary>The formulas near the key that answers behaved like and that nobody listed, the commonest first.</summary>
    public IReadOnlyList<(string Formula, int Times)> NearMisses { get; init; } = [];

    /// <summary>True if the difficulty is known well enough to balance sets by.</summary>
    public bool IsEnough => Error <= EnoughError;

    /// <summary>About how many more answers it takes until it is; null where nobody can say, 0 where it is.</summary>
    public int? StillWanted =>
        Error is not { } error || !double.IsFinite(error) ? null
        : IsEnough ? 0
        : (int)Math.Ceiling(Answers * (Math.Pow(error / EnoughError, 2) - 1));
}
