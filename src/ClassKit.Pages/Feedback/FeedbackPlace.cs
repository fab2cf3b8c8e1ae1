using System.Net;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Lettering;
using ClassKit.Exercises.Solutions;
using ClassKit.Grading.Results;
using ClassKit.Pages.Outcomes;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Outcomes;

namespace ClassKit.Pages.Feedback;

/// <summary>One answer and the exercise that it belongs to.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Answer">The answer.</param>
public sealed record FeedbackPlace(ExerciseFeedback Exercise, AnswerGrade Answer)
{
    /// <summary>As everywhere: 2c.</summary>
    public string Label => $"{Exercise.Number}{Exercise.LetterOf(Answer.Part.Id)}";

    /// <summary>The outcome as pages show it.</summary>
    public Outcome Shown => OutcomeText.Shown(Answer.Outcome, Answer.Part);

    /// <summary>True where the instructor has decided: whatever was found, there is nothing left to put right.</summary>
    public bool IsSettled => Answer.Correction is not null;

    /// <summary>Where the page tells of it in full.</summary>
    public string Anchor => $"part-{Answer.Exercise.Id}-{Answer.Part.Id}";

    /// <summary>What to say of it in a sentence.</summary>
    public string Words =>
        string.Join(
            ' ',
            (
                (string?[])
                    [
                        Answer.Outcome == Outcome.Misconception ? Answer.Misconception!.Words : FindingWords.Of(Answer),
                        Exercise.Repeated(Answer),
                    ]
            ).OfType<string>()
        );

    /// <summary>What was entered, as the student reads it.</summary>
    public string Entered(DealtStudent dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        return StudentAnswer.Of(Answer, dealt.GivensOf(Answer.Exercise.Id));
    }

    /// <summary>
    /// What is right with the numbers dealt to a student, as HTML: an option behind the letter that the student reads it behind.
    /// </summary>
    public string Right(DealtStudent dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        return Answer.Part.Choice is null
            ? Solution(dealt).Numbers
            : WebUtility.HtmlEncode(LetteredAnswer.Of(Answer.Exercise, Answer.Part, dealt.GivensOf(Answer.Exercise.Id), Answer.Expected));
    }

    /// <summary>How the part is worked out with the numbers dealt to a student.</summary>
    public WorkedSolution Solution(DealtStudent dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        return WorkedSolution.Of(Answer.Exercise, Answer.Part, dealt.GivensOf(Answer.Exercise.Id), dealt.AnswersOf(Answer.Exercise.Id));
    }
}
