using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>Everything that the method of one answer may stand on, by name and in the order in which it is tried.</summary>
/// <remarks>
/// Most answers are right as they stand, so that what else there is to stand on is made when somebody asks for it, each ground once:
/// behaviours are remembered by the ground itself.
/// </remarks>
/// <param name="part">The part.</param>
/// <param name="trials">The trials.</param>
/// <param name="earlier">What is known of the answers before it.</param>
/// <param name="follows">True for an answer that follows the sheet, and not one that is typed.</param>
/// <param name="usesEarlier">True if it computes with an earlier answer's cell.</param>
/// <param name="rules">The judge's.</param>
internal sealed class Grounds(
    Part part,
    IReadOnlyList<Trial> trials,
    EarlierAnswers earlier,
    bool follows,
    bool usesEarlier,
    JudgeRules rules
)
{
    private bool? _areOne;
    private Ground? _own;
    private Ground? _onRight;
    private Ground? _onRightAsRead;

    /// <summary>The workbook as it stands.</summary>
    public Ground AsItStands { get; } = Ground.AsItStands(part, trials);

    /// <summary>The student's own earlier answers; null where all grounds are one.</summary>
    public Ground? Own => AreOne ? null : _own ??= Ground.Own(part, trials, earlier.Unreached, rules.InProportion);

    /// <summary>Right earlier answers in the cells that the answer uses; null where it uses none, or all grounds are one.</summary>
    public Ground? OnRight =>
        AreOne || !usesEarlier
            ? null
            : _onRight ??= Ground.Right(part, trials, earlier.Parts.ToDictionary(before => before, _ => (Reading?)null));

    /// <summary>
    /// The same written as the student's cells are read, 65 for 65 % where they hold that; null where none is read otherwise than it
    /// stands.
    /// </summary>
    public Ground? OnRightAsRead =>
        OnRight is null || !earlier.Readings.Values.Any(reading => reading is { IsScaled: true })
            ? null
            : _onRightAsRead ??= Ground.Right(part, trials, earlier.Readings);

    /// <summary>All of them: first the workbook as it stands, then what an earlier slip may be told apart by.</summary>
    public IEnumerable<Ground> All => BesideAsItStands.Prepend(AsItStands);

    /// <summary>Those on which something else stands in the cells of earlier answers than is there.</summary>
    public IEnumerable<Ground> BesideAsItStands
    {
        get
        {
            if (Own is { } own)
                yield return own;
            if (OnRight is { } right)
                yield return right;
            if (OnRightAsRead is { } asRead)
                yield return asRead;
        }
    }

    /// <summary>
    /// True if there is nothing to tell grounds apart by: the answer is typed, nothing comes before it, or the cells before it hold, under
    /// every trial, just what the keys give.
    /// </summary>
    public bool AreOne => _areOne ??= !follows || earlier.Parts.Count == 0 || IsAllRightBefore();

    private bool IsAllRightBefore()
    {
        var dealt = trials[0];
        if (dealt.Number(part.Key, dealt.Right.Answers) != dealt.Right.Answers[part.Id])
            return false;
        foreach (var trial in trials)
        {
            foreach (var before in earlier.Parts)
            {
                if (!trial.Held.TryGetValue(before.Id, out var held) || held != trial.Right.Answers[before.Id])
                    return false;
            }
        }
        return true;
    }
}
