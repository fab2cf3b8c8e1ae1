namespace ClassKit.Desk.Jobs;

/// <summary>How far a job is.</summary>
public enum JobState
{
    /// <summary>Others are before it.</summary>
    Waiting,

    /// <summary>It is being done.</summary>
    Running,

    /// <summary>Something came of it: see <see cref="JobEnd"/>.</summary>
    Done,

    /// <summary>It was stopped.</summary>
    Stopped,

    /// <summary>A mistake of ours ended it.</summary>
    Broken,
}
