using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>A class on record is to be called otherwise.</summary>
/// <param name="Record">The record.</param>
/// <param name="Author">Who calls it so, when and why.</param>
/// <param name="Before">What it was called.</param>
/// <param name="Name">What it is called from now on.</param>
public sealed record RenameClassRequest(TeachingRecord Record, Author Author, string Before, string Name);
