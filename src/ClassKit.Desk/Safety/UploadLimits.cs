namespace ClassKit.Desk.Safety;

/// <summary>How much a browser may send at once.</summary>
internal sealed record UploadLimits
{
    /// <summary>A form without files, in bytes: a lesson's text has some 40 KB.</summary>
    public int Form { get; init; } = 2 << 20;

    /// <summary>All files of one hand-in, in bytes.</summary>
    public long HandIn { get; init; } = 1L << 30;

    /// <summary>Files of one hand-in.</summary>
    public int Files { get; init; } = 20_000;

    /// <summary>Whoever sends fewer bytes a second, after a grace, is not waited for.</summary>
    public double SlowestPerSecond { get; init; } = 240;

    /// <summary>The grace.</summary>
    public TimeSpan Grace { get; init; } = TimeSpan.FromSeconds(5);
}
