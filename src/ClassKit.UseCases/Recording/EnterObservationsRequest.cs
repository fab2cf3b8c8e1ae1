using ClassKit.Records.Storage;
using ClassKit.UseCases.Observing;

namespace ClassKit.UseCases.Recording;

/// <summary>What a class measured is to go on record.</summary>
/// <param name="Record">The record.</param>
/// <param name="Author">Who puts it there, when and why.</param>
/// <param name="Observed">What the teams measured.</param>
/// <param name="Day">When the lesson was given; null for the last day on which it is on record that it was within the last 120 days, else
/// the day of the change.</param>
public sealed record EnterObservationsRequest(TeachingRecord Record, Author Author, ObservedMade Observed, DateOnly? Day);
