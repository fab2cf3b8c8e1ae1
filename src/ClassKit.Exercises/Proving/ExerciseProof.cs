using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;

namespace ClassKit.Exercises.Proving;

/// <summary>What a few hundred draws show of an exercise before a student sees it.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Profile">How its draws fare.</param>
/// <param name="Space">How many variants it has.</param>
/// <param name="Band">Between what the effort of its variants lies.</param>
public sealed record ExerciseProof(Exercise Exercise, RejectionProfile Profile, VariantSpace Space, EffortBand Band)
{
    /// <summary>
    /// Of a hundred draws at least fifteen must be fit to deal: then a hundred failures in a row happen to one class of thirty in
    /// a hundred thousand, and nobody waits for a deal.
    /// </summary>
    public const double LeastKept = 0.15;

    /// <summary>A class of usual size; an exercise with fewer variants makes its students share.</summary>
    public const int UsualClass = 30;

    private const int Draws = 1000;

    /// <summary>Draws on trial; the same exercise gives the same proof always.</summary>
    public static ExerciseProof Of(Exercise exercise)
    {
        var generator = VariantGenerator.For(exercise);
        var profile = RejectionProfile.Of(generator, Draws);
        return new(exercise, profile, VariantSpace.Of(generator, profile.KeptShare), generator.Band!);
    }

    /// <summary>Why the exercise should not be dealt, and of how many draws that reach so far; null if it can.</summary>
    public (Rejection Rejection, int Reached)? Fault => Profile.KeptShare >= LeastKept ? null : Profile.Worst;

    /// <summary>True if students of a class of usual size will share variants.</summary>
    public bool IsNarrow => Space.Count < UsualClass;
}
