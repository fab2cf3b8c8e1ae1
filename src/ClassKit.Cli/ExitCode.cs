namespace ClassKit.Cli;

/// <summary>What the process says when it ends.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>The content or input has errors, all listed.</summary>
    public const int InputErrors = 1;

    /// <summary>The command line itself is wrong.</summary>
    public const int WrongUsage = 2;

    /// <summary>An error of ours (EX_SOFTWARE of sysexits.h).</summary>
    public const int OurError = 70;

    /// <summary>Stopped by Ctrl+C, as shells say it: 128 and the number of the signal SIGINT.</summary>
    public const int Stopped = 130;
}
