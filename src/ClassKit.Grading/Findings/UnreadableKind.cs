namespace ClassKit.Grading.Findings;

/// <summary>What keeps a typed text from being a number.</summary>
public enum UnreadableKind
{
    /// <summary>There is no digit in it.</summary>
    NoDigit,

    /// <summary>A word stands where none can.</summary>
    Word,

    /// <summary>A sign stands where none can.</summary>
    Character,

    /// <summary>There is a second number.</summary>
    SecondNumber,

    /// <summary>Its points and commas make no number.</summary>
    Marks,

    /// <summary>It is longer than any number is.</summary>
    TooLong,
}
