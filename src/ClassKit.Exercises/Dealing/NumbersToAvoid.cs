using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Dealing;

/// <summary>Variants that were dealt before and must not come again.</summary>
public sealed class NumbersToAvoid
{
    private readonly HashSet<(string Student, string Exercise, string Key)> _dealt = [];
    private readonly bool _anyones;

    private NumbersToAvoid(DealtClass? before, bool anyones)
    {
        _anyones = anyones;
        if (before is null)
            return;
        foreach (var student in before.Students)
        {
            foreach (var exercise in before.Exercises.Where(exercise => student.Has(exercise.Id)))
                _dealt.Add((Of(student.Who), exercise.Id, VariantKey.Of(exercise, student.GivensOf(exercise.Id))));
        }
    }

    /// <summary>Nothing to avoid.</summary>
    public static NumbersToAvoid None { get; } = new(null, false);

    /// <summary>Nobody gets what anybody got: for practice on exercises that are still to be handed in.</summary>
    public static NumbersToAvoid OfAnyone(DealtClass before)
    {
        ArgumentNullException.ThrowIfNull(before);
        return new(before, true);
    }

    /// <summary>Nobody gets what they got themselves: for practice after grading.</summary>
    public static NumbersToAvoid OfEach(DealtClass before)
    {
        ArgumentNullException.ThrowIfNull(before);
        return new(before, false);
    }

    /// <summary>True if practice on an exercise gives away what is still to be handed in, whatever its numbers.</summary>
    public bool GivesAway(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return _anyones && exercise.HasOneAnswer() && _dealt.Any(dealt => dealt.Exercise == exercise.Id);
    }

    /// <summary>True if a variant is not for this student. Where every variant has the same answers, none is better than another.</summary>
    internal bool Has(Student student, Variant variant) =>
        _dealt.Count > 0
        && _dealt.Contains((Of(student), variant.Exercise.Id, VariantKey.Of(variant.Exercise, variant.Givens)))
        && !variant.Exercise.HasOneAnswer();

    private string Of(Student student) => _anyones ? "" : student.Id;
}
