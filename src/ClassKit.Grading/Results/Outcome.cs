namespace ClassKit.Grading.Results;

/// <summary>What the grader says of one part.</summary>
public enum Outcome
{
    /// <summary>A formula, right on the dealt and on all fresh inputs.</summary>
    Sound,

    /// <summary>The right number, typed or not surviving fresh inputs; where no formula was asked that is all there is to it.</summary>
    ValueOnly,

    /// <summary>The right method applied to an earlier wrong answer of the student's own.</summary>
    FollowThrough,

    /// <summary>A known wrong method.</summary>
    Misconception,

    /// <summary>A number or an error value that nothing above explains.</summary>
    Incorrect,

    /// <summary>Nothing was entered.</summary>
    Blank,

    /// <summary>Text that is no number.</summary>
    Unreadable,

    /// <summary>
    /// A formula that we cannot evaluate, a letter among words, or an answer in own words: never counted against the student, always put before the instructor.
    /// </summary>
    Unsupported,
}
