namespace ClassKit.Exercises.Authoring;

/// <summary>What makes a part one that is answered by choosing. Its key gives an option's number.</summary>
/// <param name="From">What is chosen from.</param>
/// <param name="Why">Why the right one is right, to the student: a sentence or two.</param>
public sealed record Choice(OptionList From, string Why)
{
    /// <summary>What is looked at before choosing; null for nothing.</summary>
    public Drawing? Drawing { get; init; }
}
