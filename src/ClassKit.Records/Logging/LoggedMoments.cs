namespace ClassKit.Records.Logging;

/// <summary>What makes the log keep a row.</summary>
[Flags]
internal enum LoggedMoments
{
    Changed = 1,
    TakenAway = 2,
    Both = Changed | TakenAway,
}
