namespace ClassKit.Pages.Feedback;

/// <summary>Why points are missing, as far as one word of advice serves for all of them.</summary>
public enum LossCause
{
    /// <summary>Wrong answers, each to be put right by itself.</summary>
    Slips,

    /// <summary>Right numbers without the formula or the working that was asked.</summary>
    Typed,

    /// <summary>Nothing entered.</summary>
    Blank,
}
