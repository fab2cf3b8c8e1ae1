using ClassKit.Records.Observations;

namespace ClassKit.UseCases.Recording;

/// <summary>What a class measured is on record.</summary>
/// <param name="Given">The lesson and its day.</param>
/// <param name="Values">How many measurements came back.</param>
public sealed record EnteredObservations(LessonGiven Given, int Values);
