using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging;

/// <summary>Finds the wrong turn that an exercise lists and that an answer took.</summary>
/// <param name="tried">The exercise and what it is tried with.</param>
internal sealed class MisconceptionFinder(TriedExercise tried)
{
    private Trial Dealt => tried.Dealt;

    /// <summary>The first that the answer meets; null for none, or for a typed number that is no method's.</summary>
    public Misconception? Find(TriedAnswer answer, EarlierAnswers earlier, Reading reading) =>
        !answer.IsFormula && (reading.Dealt == 0 || tried.IsFilledIn(answer.Part, reading.Written(reading.Dealt)))
            ? null
            : answer.Part.Misconceptions.FirstOrDefault(misconception => Meets(answer, earlier, reading, misconception));

    /// <summary>True if a typed number is what a wrong turn gives to all of the digits that were written.</summary>
    public bool IsWritten(Part part, Misconception misconception, Reading reading) =>
        new[] { Dealt.Right.Answers, Dealt.HeldBefore(part), Dealt.MeantBefore(part) }.Any(earlier =>
            Dealt.Number(misconception.Formula, earlier) is { } given && TypedDigits.AreThoseOf(given, reading.Dealt)
        );

    /// <summary>True if a formula is a wrong turn to the last digit, on right or on the student's own earlier answers.</summary>
    public bool IsExact(TriedAnswer answer, Misconception misconception, Reading reading) =>
        answer.Grounds.All.Any(ground =>
            answer.On(ground, reading) is var behaviour
            && new Func<int, IReadOnlyDictionary<string, double>>[]
            {
                trial => tried.Trials[trial].Right.Answers,
                trial => ground.Earlier[trial],
                trial => tried.Trials[trial].MeantBefore(answer.Part),
            }.Any(before =>
                behaviour.Throughout(
                    (trial, value) =>
                        tried.Trials[trial].Number(misconception.Formula, before(trial)) is { } given && Near.Computed.Same(given, value)
                )
            )
        );

    /// <summary>
    /// Whether an answer is what a wrong method gives, on right or on the student's own earlier answers: under all trials for a formula, on
    /// whatever ground it follows the inputs, and on the dealt inputs for a typed number.
    /// </summary>
    private bool Meets(TriedAnswer answer, EarlierAnswers earlier, Reading reading, Misconception misconception)
    {
        bool Gives(int trial, IReadOnlyDictionary<string, double> before, double value) =>
            tried.Trials[trial].Number(misconception.Formula, before) is { } mistaken && answer.Part.Tolerance.Accepts(mistaken, value);
        bool OnRight(int trial, double value) => Gives(trial, tried.Trials[trial].Right.Answers, value);
        bool OnMeant(int trial, double value) => Gives(trial, tried.Trials[trial].MeantBefore(answer.Part), value);
        // 100 is typed for many reasons: it must be just what the wrong method gives, and not near it.
        if (!answer.IsFormula && TellingNumbers.IsPowerOfTen(reading.Dealt))
            return Dealt.Number(misconception.Formula, Dealt.Right.Answers) is { } mistaken && Near.Computed.Same(mistaken, reading.Dealt);
        if (!answer.IsFormula)
            return OnRight(0, reading.Dealt)
                || (earlier.AreTelling && (Gives(0, Dealt.HeldBefore(answer.Part), reading.Dealt) || OnMeant(0, reading.Dealt)));
        return answer.Grounds.All.Any(ground =>
            answer.On(ground, reading) is { Varies: true } behaviour
            && (
                behaviour.Throughout(OnRight)
                || behaviour.Throughout((trial, value) => Gives(trial, ground.Earlier[trial], value))
                || behaviour.Throughout(OnMeant)
            )
        );
    }
}
