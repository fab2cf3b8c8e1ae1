namespace ClassKit.Exercises.Marking;

/// <summary>How the outcomes of parts become points.</summary>
/// <param name="Id">The file's name under rubrics/, without its ending.</param>
/// <param name="Title">What it is called.</param>
/// <param name="AccuracyShare">The share of a part's points that a right number earns by itself, 0 to 1, where a formula was asked; the
/// rest is for the method.</param>
/// <param name="FollowThroughShare">The share that the right method applied to an own earlier wrong answer earns, 0 to 1.</param>
/// <param name="MisconceptionShare">The share that a known wrong method earns, 0 to 1; usually 0.</param>
/// <param name="TeachAgainBelow">A part is put forward for teaching again when fewer than this share of answers show the method, 0 to
/// 1.</param>
public sealed record MarkingScheme(
    string Id,
    string Title,
    decimal AccuracyShare,
    decimal FollowThroughShare,
    decimal MisconceptionShare,
    decimal TeachAgainBelow
)
{
    /// <summary>
    /// The share that the right quantity in another unit earns, 0 to 1; a formula must be off by that alone under all inputs.
    /// </summary>
    public decimal UnitSlipShare { get; init; }

    /// <summary>The share that the right method earns where it is rounded on the way or further than the part allows, 0 to 1.</summary>
    public decimal RoundingSlipShare { get; init; }

    /// <summary>
    /// The share that a wrong method earns that nobody listed and that is one or two edits away from the right one, 0 to 1; null for that
    /// of a misconception.
    /// </summary>
    public decimal? NearMissShare { get; init; }

    /// <summary>What late work costs; null for nothing.</summary>
    public LatePolicy? Late { get; init; }

    /// <summary>How the points of exercises make a total.</summary>
    public TotalRule Total { get; init; } = TotalRule.Everything;

    /// <summary>Which of several workbooks of one student counts.</summary>
    public VersionChoice Versions { get; init; }
}
