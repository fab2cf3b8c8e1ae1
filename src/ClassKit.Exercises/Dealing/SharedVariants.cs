using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Dealing;

/// <summary>Students share variants, because an exercise has too few for all.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Students">How many have one that another has too.</param>
/// <param name="Variants">How many different ones there are.</param>
public sealed record SharedVariants(Exercise Exercise, int Students, int Variants);
