using System.Collections.Concurrent;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.FollowUps;

/// <summary>Other numbers for the exercise in which a student lost most, to work at once and on paper.</summary>
/// <remarks>
/// Never one whose answers no number changes: the student has just been told them. Made once for a class: of a large one the choices on
/// record are many, and few inputs are drawn. It can be asked from several threads.
/// </remarks>
public sealed class AnotherTry
{
    private readonly Dictionary<string, IReadOnlyList<IReadOnlyDictionary<string, decimal>>> _drawn;
    private readonly Dictionary<(string Student, string Exercise), IReadOnlyList<int>> _tried = [];
    private readonly ConcurrentDictionary<(string Exercise, int Place), Variant?> _variants = new();

    /// <param name="judging">What decided the grades of the class.</param>
    public AnotherTry(JudgeRecord judging)
    {
        ArgumentNullException.ThrowIfNull(judging);
        _drawn = judging.Pools.ToDictionary(pool => pool.Exercise, pool => pool.Inputs);
        foreach (var choice in judging.Choices)
            _tried[(choice.Student, choice.Exercise)] = choice.Places;
    }

    /// <summary>
    /// Inputs drawn for the class that were not used to try this student's workbook; null where nothing was lost or nothing else was drawn.
    /// </summary>
    /// <param name="student">The student's grades.</param>
    public Variant? For(StudentGrade student)
    {
        ArgumentNullException.ThrowIfNull(student);
        if (Weakest(student) is not { } exercise || !_drawn.TryGetValue(exercise.Id, out var drawn))
            return null;

        var tried = _tried.GetValueOrDefault((student.Who.Id, exercise.Id), []);
        var untried = Enumerable.Range(0, drawn.Count).FirstOrDefault(place => !tried.Contains(place), -1);
        return untried < 0
            ? null
            : _variants.GetOrAdd((exercise.Id, untried), _ =>
                FreshInputs.Recorded(exercise, [drawn[untried]]) is { All: [var other, ..] } ? other : null
            );
    }

    private static Exercise? Weakest(StudentGrade student) =>
        student
            .Answers.GroupBy(answer => answer.Exercise)
            .Select(answers =>
                (answers.Key, Lost: answers.Sum(answer => answer.OutOf - answer.Points), OutOf: answers.Sum(answer => answer.OutOf))
            )
            .Where(exercise => exercise.Lost > 0 && !exercise.Key.HasOneAnswer())
            .OrderByDescending(exercise => exercise.Lost / exercise.OutOf)
            .FirstOrDefault()
            .Key;
}
