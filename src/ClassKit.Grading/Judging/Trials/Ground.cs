using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>The earlier answers that a later one stands on while its method is tried, and what is right on them.</summary>
/// <param name="Instead">For each trial, what is put into the cells of earlier parts; an empty table leaves all as they are.</param>
/// <param name="Earlier">For each trial, the earlier answers that the key is worked out with.</param>
/// <param name="Expected">For each trial, what the key gives; null where it gives no number.</param>
internal sealed record Ground(
    IReadOnlyList<IReadOnlyDictionary<string, double>> Instead,
    IReadOnlyList<IReadOnlyDictionary<string, double>> Earlier,
    IReadOnlyList<double?> Expected
)
{
    /// <summary>
    /// For each trial, the share of the part's tolerance that is allowed; see <see cref="OwnAllowance"/>. Null for all of it.
    /// </summary>
    public IReadOnlyList<double>? Allowance { get; init; }

    private static readonly IReadOnlyDictionary<string, double> Nothing = new Dictionary<string, double>();

    /// <summary>The workbook as it stands, held against the right answers.</summary>
    public static Ground AsItStands(Part part, IReadOnlyList<Trial> trials) =>
        new(
            EachTrial.WhenAsked(trials, _ => Nothing),
            EachTrial.WhenAsked(trials, trial => trial.HeldBefore(part)),
            EachTrial.WhenAsked(trials, trial => (double?)trial.Right.Answers[part.Id])
        );

    /// <summary>
    /// The student's own earlier answers as far as fresh inputs reach them, and right ones where they do not: a number typed there would
    /// let a number typed here pass for a method.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="trials">The trials.</param>
    /// <param name="unreached">The earlier parts that fresh inputs do not reach, with how their cells are read.</param>
    /// <param name="inProportion">True if the tolerance shrinks with answers.</param>
    public static Ground Own(Part part, IReadOnlyList<Trial> trials, IReadOnlyDictionary<Part, Reading?> unreached, bool inProportion)
    {
        var earlier = EachTrial.Of(trials, trial =>
        {
            if (unreached.Count == 0)
                return trial.HeldBefore(part);
            var before = new Dictionary<string, double>(trial.HeldBefore(part));
            foreach (var other in unreached.Keys)
                before[other.Id] = trial.Right.Answers[other.Id];
            return before;
        });
        var expected = EachTrial.Of(trials, (trial, at) => trial.Number(part.Key, earlier[at]));
        return new(EachTrial.Of(trials, trial => Written(trial, unreached)), earlier, expected)
        {
            Allowance = inProportion
                ? EachTrial.Of(trials, (trial, at) => OwnAllowance.Share(part.Tolerance, expected[at], trial.Right.Answers[part.Id]))
                : null,
        };
    }

    /// <summary>Right earlier answers in all cells.</summary>
    /// <param name="part">The part.</param>
    /// <param name="trials">The trials.</param>
    /// <param name="earlier">The earlier parts, with how the student's cells are read if the right answers are to be written alike, else
    /// null.</param>
    public static Ground Right(Part part, IReadOnlyList<Trial> trials, IReadOnlyDictionary<Part, Reading?> earlier) =>
        new(
            EachTrial.Of(trials, trial => Written(trial, earlier)),
            EachTrial.WhenAsked(trials, trial => trial.Right.Answers),
            EachTrial.WhenAsked(trials, trial => (double?)trial.Right.Answers[part.Id])
        );

    private static Dictionary<string, double> Written(Trial trial, IReadOnlyDictionary<Part, Reading?> parts) =>
        parts.ToDictionary(
            part => part.Key.Id,
            part => part.Value?.Written(trial.Right.Answers[part.Key.Id]) ?? trial.Right.Answers[part.Key.Id]
        );
}
