namespace ClassKit.Exercises.Guarantees;

/// <summary>In what way an answer makes no sense in a kitchen.</summary>
public enum AnswerFault
{
    /// <summary>Less than nothing, in a unit of which there cannot be less.</summary>
    Negative,

    /// <summary>A million or more.</summary>
    TooLarge,

    /// <summary>Nothing within its tolerance.</summary>
    Nothing,

    /// <summary>Less than a thousandth.</summary>
    TooSmall,
}
