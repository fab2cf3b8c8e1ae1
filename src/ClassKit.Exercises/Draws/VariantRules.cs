using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Guarantees;

namespace ClassKit.Exercises.Draws;

/// <summary>
/// What is true of every variant, in the order in which draws are tried: what is cheap to see and often broken comes first.
/// </summary>
public static class VariantRules
{
    /// <summary>The rules that fresh inputs keep: those without which a formula could not be judged by what it does.</summary>
    public static IReadOnlyList<VariantRule> OfFreshInputs { get; } =
    [
        new KeysGiveNumbers(),
        new ConstraintsHold(),
        new MisconceptionsApartFromRight(),
        new MisconceptionsToldApart(),
        new NothingToCopy(),
        new NoTieNearby(),
    ];

    /// <summary>The rules that a variant must keep besides before a student is dealt it.</summary>
    public static IReadOnlyList<VariantRule> OfDealing { get; } =
    [.. OfFreshInputs, new GivensFitTheBench(), new AnswersWithinReason(), new AnswersCanBeWritten(), new EarlyRoundingStaysRight()];

    /// <summary>All rules of dealing, with those that are measured against what is usual for the exercise.</summary>
    /// <param name="structure">The exercise.</param>
    /// <param name="band">Between what the effort of every variant lies.</param>
    internal static IReadOnlyList<VariantRule> For(KeyStructure structure, out EffortBand band)
    {
        var sample = UsualDraws.Of(structure, OfDealing);
        band = structure.Exercise.Effort ?? UsualDraws.BandOf(sample);
        return [.. OfDealing, new SlipsCarriedOnApart(sample), new EffortIsEven(band)];
    }
}
