using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Other numbers for the exercise in which a student lost most, to work at once and on paper.</summary>
public static class AnotherTry
{
    /// <summary>Inputs drawn for the class that were not used to try this student's workbook; null where nothing was lost or nothing else was drawn.</summary>
    /// <param name="student">The student's grades.</param>
    /// <param name="judging">What decided them.</param>
    public static Variant? For(StudentGrade student, JudgeRecord judging)
    {
        ArgumentNullException.ThrowIfNull(student);
        ArgumentNullException.ThrowIfNull(judging);
        if (Weakest(student) is not { } exercise || judging.Pools.FirstOrDefault(pool => pool.Exercise == exercise.Id) is not { } drawn) return null;

        var tried = judging.Choices.FirstOrDefault(choice => choice.Student == student.Who.Id && choice.Exercise == exercise.Id)?.Places ?? [];
        var untried = drawn.Inputs.Where((_, place) => !tried.Contains(place)).Take(1).ToList();
        return FreshInputs.Recorded(exercise, untried) is { All: [var other, ..] } ? other : null;
    }

    private static Exercise? Weakest(StudentGrade student) => student.Answers
        .GroupBy(answer => answer.Exercise)
        .Select(answers => (answers.Key, Lost: answers.Sum(answer => answer.OutOf - answer.Points), OutOf: answers.Sum(answer => answer.OutOf)))
        .Where(exercise => exercise.Lost > 0)
        .OrderByDescending(exercise => exercise.Lost / exercise.OutOf)
        .FirstOrDefault().Key;
}
