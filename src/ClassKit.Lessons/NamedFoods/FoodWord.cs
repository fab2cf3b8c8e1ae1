namespace ClassKit.Lessons.NamedFoods;

/// <summary>A word of a text, as names of foods are looked up.</summary>
/// <param name="Word">In small letters and in the singular.</param>
/// <param name="Start">Where it begins in the text.</param>
internal sealed record FoodWord(string Word, int Start)
{
    /// <summary>The word.</summary>
    public override string ToString() => Word;
}
