using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Texts;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Results;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Outcomes;

namespace ClassKit.Pages.Feedback;

/// <summary>One exercise as a feedback page tells it.</summary>
/// <param name="Number">The number that it has for the class, from 1.</param>
/// <param name="Exercise">The exercise.</param>
/// <param name="Answers">Its answers, in the order of its parts.</param>
/// <param name="IsCounted">True if its points are part of the total.</param>
public sealed record ExerciseFeedback(int Number, Exercise Exercise, IReadOnlyList<AnswerGrade> Answers, bool IsCounted)
{
    /// <summary>What its answers earned.</summary>
    public decimal Points => Answers.Sum(answer => answer.Points);

    /// <summary>What they could earn.</summary>
    public decimal OutOf => Answers.Sum(answer => answer.OutOf);

    /// <summary>A student's exercises in workbook order.</summary>
    public static IReadOnlyList<ExerciseFeedback> Of(StudentGrade grade, DealtClass dealt)
    {
        var numbers = dealt.Exercises.Index().ToDictionary(entry => entry.Item.Id, entry => entry.Index + 1);
        var uncounted = grade.Total.Uncounted;
        return
        [
            .. grade
                .Answers.GroupBy(answer => answer.Exercise.Id)
                .Select(answers => new ExerciseFeedback(
                    numbers[answers.Key],
                    answers.First().Exercise,
                    [.. answers],
                    !uncounted.Contains(answers.Key)
                )),
        ];
    }

    /// <summary>The exercise that there are other numbers for, by its number; null if there are none.</summary>
    public static (int Number, Variant Another)? Again(IReadOnlyList<ExerciseFeedback> exercises, Variant? another) =>
        another is null ? null : (exercises.First(exercise => exercise.Exercise.Id == another.Exercise.Id).Number, another);

    /// <summary>The letter of one of its parts.</summary>
    public string LetterOf(string part) => Phrases.Letter(Exercise.Parts.Index().First(entry => entry.Item.Id == part).Index);

    /// <summary>Where the first slip lies and what was carried on from it, or what was left blank; null if there is neither.</summary>
    public string? FirstSlip()
    {
        if (Answers.FirstOrDefault(answer => OutcomeText.IsSlip(answer.Outcome) && answer.Correction is null) is not { } slip)
            return LeftBlank();

        var followed = Answers.Where(answer => answer.Outcome == Outcome.FollowThrough).Select(answer => LetterOf(answer.Part.Id)).ToList();
        var where = $"The first slip is in part {LetterOf(slip.Part.Id)}.";
        return followed.Count switch
        {
            0 => where,
            1 => $"{where} Part {followed[0]} carries it on with the right method, so it still earns its credit.",
            _ => $"{where} Parts {Phrases.List(followed)} carry it on with the right method, so they still earn their credit.",
        };
    }

    private string? LeftBlank()
    {
        var blank = Answers
            .Where(answer => answer.Outcome == Outcome.Blank && answer.Correction is null)
            .Select(answer => LetterOf(answer.Part.Id))
            .ToList();
        if (blank.Count == 0)
            return null;
        return blank.Count == Answers.Count
            ? "This exercise was left blank."
            : $"{Counted.Noun(blank.Count, "Part")} {Phrases.List(blank)} {Counted.Noun(blank.Count, "was", "were")} left blank.";
    }

    /// <summary>That the student put the step of one answer into other places too; null if not.</summary>
    public string? Repeated(AnswerGrade answer) => RepeatedStepWords.Of(answer, Answers);

    /// <summary>The student's own earlier answers that one answer was judged with, in words; null if there were none.</summary>
    public string? JudgedWith(AnswerGrade answer)
    {
        if (answer.OwnEarlierAnswers.Count == 0)
            return null;
        var own = Exercise
            .Parts.Where(part => answer.OwnEarlierAnswers.ContainsKey(part.Id))
            .Select(part => $"{ResultText.Of(part, answer.OwnEarlierAnswers[part.Id])} from part {LetterOf(part.Id)}")
            .ToList();
        return $"Judged with your own {Phrases.List(own)}.";
    }
}
