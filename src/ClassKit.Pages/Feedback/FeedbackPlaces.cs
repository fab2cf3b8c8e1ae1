using ClassKit.Grading.Results;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Outcomes;

namespace ClassKit.Pages.Feedback;

/// <summary>A student's answers in workbook order, each with its exercise, and those of a kind among them.</summary>
/// <param name="exercises">The exercises in workbook order.</param>
public sealed class FeedbackPlaces(IReadOnlyList<ExerciseFeedback> exercises)
{
    private readonly List<FeedbackPlace> _all =
    [
        .. exercises.SelectMany(exercise => exercise.Answers.Select(answer => new FeedbackPlace(exercise, answer))),
    ];

    private IEnumerable<FeedbackPlace> Unsettled => _all.Where(place => !place.IsSettled);

    /// <summary>Entered and wrong.</summary>
    public IReadOnlyList<FeedbackPlace> Slips => [.. Unsettled.Where(place => OutcomeText.IsSlip(place.Answer.Outcome))];

    /// <summary>Nothing entered.</summary>
    public IReadOnlyList<FeedbackPlace> Blank => [.. Unsettled.Where(place => place.Answer.Outcome == Outcome.Blank)];

    /// <summary>The right number, and no formula that makes it where one was asked.</summary>
    public IReadOnlyList<FeedbackPlace> Typed => [.. Unsettled.Where(place => place.Shown == Outcome.ValueOnly)];

    /// <summary>In own words, and not read by the instructor yet.</summary>
    public IReadOnlyList<FeedbackPlace> Written => [.. _all.Where(place => place.Answer is { Part.InWords: not null, IsUndecided: true })];

    /// <summary>Decided by the instructor, with fewer points than the part is worth: nothing to put right, and no praise either.</summary>
    public IReadOnlyList<FeedbackPlace> Settled => [.. _all.Where(place => place.IsSettled && place.Answer.Points < place.Answer.OutOf)];

    /// <summary>The right method, on an own earlier slip.</summary>
    public IReadOnlyList<FeedbackPlace> Carried => [.. _all.Where(place => place.Answer.Outcome == Outcome.FollowThrough)];

    /// <summary>
    /// Wrong or blank: what a worked solution is wanted of. Right numbers without a formula only where nothing else was missed: whoever
    /// found them knows how they are worked out.
    /// </summary>
    public IReadOnlyList<FeedbackPlace> Missed
    {
        get
        {
            var wrong = Unsettled
                .Where(place =>
                    place.Shown is not (Outcome.Sound or Outcome.FollowThrough or Outcome.ValueOnly) && !Written.Contains(place)
                )
                .ToList();
            return wrong.Count > 0 ? wrong : Typed;
        }
    }

    /// <summary>What cost most points; of equal causes the one that has to be understood before the others.</summary>
    public LossCause CostliestCause => Enum.GetValues<LossCause>().MaxBy(LostBy);

    /// <summary>The points that one cause cost.</summary>
    public decimal LostBy(LossCause cause) =>
        (
            cause switch
            {
                LossCause.Slips => Slips,
                LossCause.Typed => Typed,
                LossCause.Blank => Blank,
            }
        ).Sum(place => place.Answer.OutOf - place.Answer.Points);

    /// <summary>Exercises in which every part is right, or has its full points by the instructor's word.</summary>
    public IReadOnlyList<ExerciseFeedback> Solid =>
        [
            .. exercises.Where(exercise =>
                exercise.Answers.All(answer =>
                    answer.Correction is null
                        ? OutcomeText.Shown(answer.Outcome, answer.Part) == Outcome.Sound
                        : answer.Points >= answer.OutOf
                )
            ),
        ];

    /// <summary>The places of some answers.</summary>
    public IReadOnlyList<FeedbackPlace> Of(IReadOnlyList<AnswerGrade> answers) => [.. _all.Where(place => answers.Contains(place.Answer))];

    /// <summary>
    /// The slips to put right first: those that cost most, and of equal ones those of which can be said what happened; in workbook order.
    /// </summary>
    /// <param name="most">At most so many.</param>
    public IReadOnlyList<FeedbackPlace> Costliest(int most)
    {
        var costliest = Slips
            .OrderByDescending(place => place.Answer.OutOf - place.Answer.Points)
            .ThenByDescending(place => place.Answer.IsExplained)
            .Take(most)
            .ToHashSet();
        return [.. Slips.Where(costliest.Contains)];
    }

    /// <summary>"part 2c", "parts 1a and 2c", or "all 7 parts".</summary>
    public string Labels(IReadOnlyList<FeedbackPlace> places) =>
        places.Count == _all.Count && places.Count > 1
            ? $"all {places.Count} parts"
            : $"{Counted.Noun(places.Count, "part")} {Phrases.List([.. places.Select(place => place.Label)])}";
}
