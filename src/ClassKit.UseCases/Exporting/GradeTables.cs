namespace ClassKit.UseCases.Exporting;

/// <summary>The tables by which schools exchange grades: 1EdTech OneRoster 1.2, CSV binding.</summary>
/// <param name="Manifest">Which tables there are.</param>
/// <param name="LineItems">The set.</param>
/// <param name="Results">A result for every student.</param>
/// <param name="Students">How many results there are.</param>
public sealed record GradeTables(string Manifest, string LineItems, string Results, int Students);
