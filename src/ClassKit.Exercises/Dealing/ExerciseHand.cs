namespace ClassKit.Exercises;

/// <summary>Hands out the variants of one exercise, each to one student as long as there are enough.</summary>
internal sealed class ExerciseHand(Exercise exercise)
{
    private readonly VariantGenerator _generator = VariantGenerator.For(exercise);
    private readonly Dictionary<string, int> _taken = [];
    private List<Variant>? _all;

    public Exercise Exercise => exercise;

    /// <summary>How many students got a variant that another has too.</summary>
    public int Shared { get; private set; }

    /// <summary>How many different variants were handed out.</summary>
    public int Different => _taken.Count;

    /// <summary>The next student's variant, or null with the reason.</summary>
    public Variant? Next(SeededDraws random, out string? problem)
    {
        problem = null;
        var drawing = _generator.Draw(random, variant => !_taken.ContainsKey(Key(variant)));
        var variant = drawing.Variant ?? Left(random);
        if (variant is null)
        {
            var reason = drawing.Rejections is [var most, ..] ? $", mostly because {most.First.Because}" : "";
            problem = $"No variant of exercise {exercise.Id} was found in {VariantGenerator.MostAttempts} draws{reason}. Check the exercise's file to see an example: classkit check names the line.";
            return null;
        }
        if (!_taken.TryAdd(Key(variant), 1))
        {
            _taken[Key(variant)]++;
            Shared++;
        }
        return variant;
    }

    /// <summary>Chance may miss the last variants there are: looks through all of them, and shares the least shared when none is left.</summary>
    private Variant? Left(SeededDraws random)
    {
        _all ??= VariantSpace.All(_generator);
        if (_all is not { Count: > 0 }) return _generator.Draw(random).Variant;
        var least = _all.Min(variant => _taken.GetValueOrDefault(Key(variant)));
        var choice = _all.FindAll(variant => _taken.GetValueOrDefault(Key(variant)) == least);
        return choice[random.Below(choice.Count)];
    }

    private string Key(Variant variant) => VariantKey.Of(exercise, variant.Givens);
}
