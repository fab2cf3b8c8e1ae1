namespace ClassKit.BenchPlans.Classes;

/// <summary>A step of a bread, by position.</summary>
/// <param name="Bread">Which of <see cref="BenchClass.Breads"/>, counted from 0.</param>
/// <param name="Step">Which of its steps, counted from 0.</param>
public readonly record struct StepOfBread(int Bread, int Step);
