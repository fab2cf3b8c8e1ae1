namespace ClassKit.Exercises.Marking;

/// <summary>Which of several workbooks that one student handed in counts.</summary>
public enum VersionChoice
{
    /// <summary>The one that earns most; the newest among equals.</summary>
    Best,

    /// <summary>The one that was changed last; the best among equals.</summary>
    Newest,
}
