namespace ClassKit.Grading.Results;

/// <summary>What the instructor saw of the working for an answer on paper.</summary>
public enum PaperWorking
{
    /// <summary>None that shows the method.</summary>
    NotSeen,

    /// <summary>Working that shows the method.</summary>
    ShowsMethod,
}
