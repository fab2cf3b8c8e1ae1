namespace ClassKit.Grading;

/// <summary>Something that a student typed, where a sentence quotes it.</summary>
/// <param name="Text">As it was typed, whole: a name that is cut in two is not found any more.</param>
public sealed record TypedMention(string Text)
{
    /// <summary>How many characters are quoted at most.</summary>
    public int Longest { get; init; } = int.MaxValue;

    /// <summary>The text as it is quoted.</summary>
    public string Shown => ShownName.Of(Text.Length <= Longest ? Text : Text[..(Longest - 1)] + "…");
}
