using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Lettering;
using ClassKit.Grading.Answers;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Judges a part that is answered by choosing. No method is asked for, so that nothing is tried on fresh inputs: the key says which option
/// is right for the student's numbers.
/// </summary>
internal static class ChoiceJudge
{
    /// <summary>The judgement, and the option that was chosen; null if none was.</summary>
    public static (Judgement Judgement, ChoiceOption? Chosen) Judge(
        Part part,
        Evaluation answer,
        Trial dealt,
        EarlierAnswers earlier,
        string cell,
        JudgeRules rules
    )
    {
        if (answer.Status != EvaluationStatus.Computed)
            return (Judgement.Unsupported(new AnswerFinding.NotEvaluated(answer.Reason!)), null);
        var value = answer.Value;
        if (value.IsBlank)
            return (new(Outcome.Blank, null, false, new AnswerFinding.Empty(cell)), null);
        if (value.IsError)
            return (new(Outcome.Incorrect, null, false, new AnswerFinding.ErrorValue(value.Error)), null);
        var (list, text) = (part.Choice!.From, value.ToString());
        var options = LetteredOptions.Of(dealt.Right.Exercise, list, dealt.Right.Givens);
        if (TypedOption.Read(options, text, rules.ReadsChoices) is { } chosen)
            return (Judge(part, list.NumberOf(chosen.Id)!.Value, dealt, earlier), chosen);
        return rules.ReadsChoices && TypedOption.NamesOne(options, text)
            ? (Judgement.Unsupported(new AnswerFinding.OptionInWords(new(text))), null)
            : (new(Outcome.Unreadable, null, false, new AnswerFinding.NoOption(new(text), list.Options.Count)), null);
    }

    private static Judgement Judge(Part part, int number, Trial dealt, EarlierAnswers earlier)
    {
        if (number == dealt.Right.Answers[part.Id])
            return new(Outcome.ValueOnly, null, false, new AnswerFinding.RightTyped());
        IReadOnlyList<IReadOnlyDictionary<string, double>> grounds =
            earlier.Wrong.Count == 0 ? [dealt.Right.Answers] : [dealt.Right.Answers, dealt.HeldBefore(part), dealt.MeantBefore(part)];
        if (grounds.Skip(1).Any(own => dealt.Number(part.Key, own) == number))
            return new(Outcome.FollowThrough, null, false, new AnswerFinding.FollowsThrough(earlier.Origins, false));
        return part.Misconceptions.FirstOrDefault(wrong => grounds.Any(ground => dealt.Number(wrong.Formula, ground) == number)) is { } met
            ? new(Outcome.Misconception, null, false, new AnswerFinding.WrongTurn(met))
            : new(Outcome.Incorrect, null, false, new AnswerFinding.NotRight());
    }
}
