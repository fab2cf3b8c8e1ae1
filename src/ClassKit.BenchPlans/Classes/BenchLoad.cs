namespace ClassKit.BenchPlans.Classes;

/// <summary>One bread made by one maker, from its first step to the tasting.</summary>
/// <param name="Maker">A team or the instructor.</param>
/// <param name="Bread">Which of <see cref="BenchClass.Breads"/>, counted from 0.</param>
public readonly record struct BenchLoad(Maker Maker, int Bread);
