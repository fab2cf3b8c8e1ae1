namespace ClassKit.Exercises.Authoring;

/// <summary>Something that can be chosen for an answer.</summary>
/// <param name="Id">The name that keys and misconceptions use.</param>
/// <param name="Words">What a student reads.</param>
public sealed record ChoiceOption(string Id, string Words);
