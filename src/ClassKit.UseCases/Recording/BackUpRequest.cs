using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>A copy of the record that is wanted.</summary>
/// <param name="Record">The record.</param>
/// <param name="Now">When, for the name of the copy.</param>
public sealed record BackUpRequest(TeachingRecord Record, DateTimeOffset Now);
