using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Dealing;

/// <summary>Hands out the variants of one exercise, each to one student as long as there are enough.</summary>
/// <param name="exercise">The exercise.</param>
/// <param name="before">Students who have a variant of it already.</param>
internal sealed class ExerciseHand(Exercise exercise, IEnumerable<DealtStudent> before)
{
    private readonly VariantGenerator _generator = VariantGenerator.For(exercise);
    private readonly HashSet<string> _taken =
    [
        .. before.Where(student => student.Has(exercise.Id)).Select(student => VariantKey.Of(exercise, student.GivensOf(exercise.Id))),
    ];
    private List<Variant>? _left;

    public Exercise Exercise => exercise;

    /// <summary>How many students got a variant that another has too.</summary>
    public int Shared { get; private set; }

    /// <summary>How many different variants were handed out.</summary>
    public int Different => _taken.Count;

    /// <summary>The next student's variant, or null with the reason.</summary>
    /// <param name="random">Where chance comes from.</param>
    /// <param name="isAvoided">True of a variant that this student must not get.</param>
    /// <param name="problem">Why there is none.</param>
    public Variant? Next(SeededDraws random, Func<Variant, bool> isAvoided, out DealProblem? problem)
    {
        problem = null;
        // Once all variants are at hand there is nothing left to draw for.
        var drawing = _left is null ? _generator.Draw(random, variant => !_taken.Contains(Key(variant)) && !isAvoided(variant)) : null;
        var variant = drawing?.Variant ?? Left(random, isAvoided);
        if (variant is null)
        {
            problem = new(
                exercise,
                VariantGenerator.MostAttempts,
                drawing?.Rejections is [var most, ..] && drawing.Refused == 0 ? most.First : null
            );
            return null;
        }
        if (!_taken.Add(Key(variant)))
            Shared++;
        return variant;
    }

    /// <summary>
    /// Chance may miss the last variants there are: hands out those left one by one, and then all of them again, so that each is shared
    /// alike.
    /// </summary>
    private Variant? Left(SeededDraws random, Func<Variant, bool> isAvoided)
    {
        _left ??= VariantSpace.All(_generator)?.FindAll(variant => !_taken.Contains(Key(variant)));
        if (_left is null)
            return _generator.Draw(random, variant => !isAvoided(variant)).Variant;
        if (_left.TrueForAll(variant => isAvoided(variant)))
            _left = VariantSpace.All(_generator)!;
        var fitting = _left.FindAll(variant => !isAvoided(variant));
        if (fitting.Count == 0)
            return null;
        var variant = fitting[random.Below(fitting.Count)];
        _left.Remove(variant);
        return variant;
    }

    private string Key(Variant variant) => VariantKey.Of(exercise, variant.Givens);
}
