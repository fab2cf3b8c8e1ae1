namespace ClassKit.Exercises;

/// <summary>Hands out the variants of one exercise, each to one student as long as there are enough.</summary>
internal sealed class ExerciseHand(Exercise exercise)
{
    private readonly VariantGenerator _generator = VariantGenerator.For(exercise);
    private readonly HashSet<string> _taken = [];
    private List<Variant>? _left;

    public Exercise Exercise => exercise;

    /// <summary>How many students got a variant that another has too.</summary>
    public int Shared { get; private set; }

    /// <summary>How many different variants were handed out.</summary>
    public int Different => _taken.Count;

    /// <summary>The next student's variant, or null with the reason.</summary>
    public Variant? Next(SeededDraws random, out string? problem)
    {
        problem = null;
        // Once all variants are at hand there is nothing left to draw for.
        var drawing = _left is null ? _generator.Draw(random, variant => !_taken.Contains(Key(variant))) : null;
        var variant = drawing?.Variant ?? Left(random);
        if (variant is null)
        {
            var reason = drawing!.Rejections is [var most, ..] ? $", mostly because {most.First.Because}" : "";
            problem = $"No variant of exercise {exercise.Id} was found in {VariantGenerator.MostAttempts} draws{reason}. Check the exercise's file to see an example: classkit check names the line.";
            return null;
        }
        if (!_taken.Add(Key(variant))) Shared++;
        return variant;
    }

    /// <summary>Chance may miss the last variants there are: hands out those left one by one, and then all of them again, so that each is shared alike.</summary>
    private Variant? Left(SeededDraws random)
    {
        _left ??= VariantSpace.All(_generator)?.FindAll(variant => !_taken.Contains(Key(variant)));
        if (_left is null) return _generator.Draw(random).Variant;
        if (_left.Count == 0) _left = VariantSpace.All(_generator)!;
        if (_left.Count == 0) return null;
        var place = random.Below(_left.Count);
        var variant = _left[place];
        _left.RemoveAt(place);
        return variant;
    }

    private string Key(Variant variant) => VariantKey.Of(exercise, variant.Givens);
}
