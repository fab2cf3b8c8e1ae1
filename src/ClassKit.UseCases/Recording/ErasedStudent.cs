using ClassKit.Records.Erasing;

namespace ClassKit.UseCases.Recording;

/// <summary>A student who was erased, or would be.</summary>
/// <param name="Erased">What is gone and what stays.</param>
/// <param name="Backups">Copies of the record that were made before, and still hold the student.</param>
public sealed record ErasedStudent(Erased Erased, IReadOnlyList<string> Backups);
