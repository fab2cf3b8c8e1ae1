namespace ClassKit.Grading.Results;

/// <summary>Why points typed into a gradebook cannot be taken over as they stand.</summary>
public abstract record TypedPointsFault
{
    private TypedPointsFault() { }

    /// <summary>The student was not dealt the exercise.</summary>
    public sealed record NotDealt : TypedPointsFault;

    /// <summary>What was typed are no points that the answer can have.</summary>
    /// <param name="Most">The most that it can.</param>
    public sealed record OutOfRange(decimal Most) : TypedPointsFault;

    /// <summary>The row has the student's id and somebody else's name: whose points they are has to be said first.</summary>
    /// <param name="Named">The name that stands there.</param>
    public sealed record OtherName(string Named) : TypedPointsFault;

    /// <summary>The instructor's table of corrections has other points for the answer.</summary>
    public sealed record OtherwiseCorrected : TypedPointsFault;
}
