using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Safety;

namespace ClassKit.Desk.Serving;

/// <summary>What one open desk has at hand.</summary>
/// <param name="keys">Its secrets.</param>
/// <param name="limits">How much a browser may send.</param>
/// <param name="folders">The folder that it is opened on.</param>
/// <param name="jobs">Long work.</param>
/// <param name="now">The clock.</param>
/// <param name="close">Ends the desk.</param>
internal sealed class DeskState(
    DeskKeys keys,
    UploadLimits limits,
    FolderHolder folders,
    JobQueue jobs,
    Func<DateTimeOffset> now,
    Action close
)
{
    /// <summary>Its secrets.</summary>
    public DeskKeys Keys => keys;

    /// <summary>How much a browser may send.</summary>
    public UploadLimits Limits => limits;

    /// <summary>The folder that it is opened on.</summary>
    public FolderHolder Folders => folders;

    /// <summary>Long work.</summary>
    public JobQueue Jobs => jobs;

    /// <summary>The time.</summary>
    public DateTimeOffset Now => now();

    /// <summary>What forms were answered with.</summary>
    public FormAnswers Answers { get; } = new();

    /// <summary>What was worked out and still holds.</summary>
    public Kept Kept { get; } = new();

    /// <summary>Ends the desk.</summary>
    public void Close() => close();
}
