using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>Tables to be read into an empty record.</summary>
/// <param name="Record">The record.</param>
/// <param name="Named">How messages name where the tables lie.</param>
/// <param name="Table">Opens the file of a name; null where there is none.</param>
public sealed record ReadBackRequest(TeachingRecord Record, string Named, Func<string, Stream?> Table);
