using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Guarantees;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Draws;

/// <summary>Draws variants of one exercise that keep every rule.</summary>
/// <remarks>Making one takes a few hundred draws, to learn what is usual for the exercise: make it once, draw often.</remarks>
public sealed class VariantGenerator
{
    /// <summary>How many draws in a row may be thrown away before the exercise itself is at fault.</summary>
    public const int MostAttempts = 1000;

    private readonly KeyStructure _structure;

    private VariantGenerator(KeyStructure structure, IReadOnlyList<VariantRule> rules, EffortBand? band)
    {
        _structure = structure;
        (Rules, Band) = (rules, band);
    }

    /// <summary>The exercise drawn from.</summary>
    public Exercise Exercise => _structure.Exercise;

    /// <summary>What is true of every variant drawn.</summary>
    public IReadOnlyList<VariantRule> Rules { get; }

    /// <summary>Between what the effort of every variant lies; null if effort is not looked at.</summary>
    public EffortBand? Band { get; }

    /// <summary>A generator of variants for students.</summary>
    public static VariantGenerator For(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var structure = new KeyStructure(exercise);
        return new(structure, VariantRules.For(structure, out var band), band);
    }

    /// <summary>A generator of inputs to try a student's formulas on.</summary>
    public static VariantGenerator ForFreshInputs(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return new(new(exercise), VariantRules.OfFreshInputs, null);
    }

    /// <summary>Makes a variant of the givens, or says which rule they break.</summary>
    public Variant? TryMake(IReadOnlyDictionary<string, decimal> givens, out Breach? breach)
    {
        var candidate = new Candidate(_structure, givens);
        breach = candidate.FirstBreach(Rules);
        return breach is null ? candidate.ToVariant() : null;
    }

    /// <summary>One draw, whatever comes of it.</summary>
    public Variant? TryDraw(SeededDraws random, out IReadOnlyDictionary<string, decimal> givens, out Breach? breach)
    {
        ArgumentNullException.ThrowIfNull(random);
        givens = Candidate.DrawGivens(Exercise, random);
        return TryMake(givens, out breach);
    }

    /// <summary>Draws givens until they keep every rule and <paramref name="accept"/> takes them.</summary>
    /// <param name="random">Where chance comes from.</param>
    /// <param name="accept">A last word on a variant that keeps the rules; null takes any.</param>
    public Drawing Draw(SeededDraws random, Func<Variant, bool>? accept = null)
    {
        var tally = new RejectionTally();
        var refused = 0;
        for (var attempt = 0; attempt < MostAttempts; attempt++)
        {
            if (TryDraw(random, out var givens, out var breach) is not { } variant)
                tally.Add(breach!, givens);
            else if (accept is not null && !accept(variant))
                refused++;
            else
                return new(variant, tally.ToList(), refused);
        }
        return new(null, tally.ToList(), refused);
    }
}
