namespace ClassKit.UseCases;

/// <summary>The folder of grades that is graded into again, where the instructor may have typed points into the gradebook.</summary>
/// <param name="Folder">The folder.</param>
/// <param name="TakeOver">True to take what was typed over into the table of corrections, false only to show it.</param>
public sealed record EarlierGradebook(string Folder, bool TakeOver);
