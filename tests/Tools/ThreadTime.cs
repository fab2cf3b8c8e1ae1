using System.Diagnostics;
using System.Runtime.InteropServices;

namespace ClassKit.Tests;

/// <summary>
/// Processor time of the current thread, so that other programs on the machine do not count; where the system has no such clock, the time
/// that passes.
/// </summary>
internal static class ThreadTime
{
    private const int OfThread = 3; // CLOCK_THREAD_CPUTIME_ID of Linux

    public static double Nanoseconds =>
        OperatingSystem.IsLinux() && Read(OfThread, out var time) == 0
            ? time.Seconds * 1e9 + time.Nanoseconds
            : Stopwatch.GetTimestamp() * (1e9 / Stopwatch.Frequency);

    [DllImport("libc", EntryPoint = "clock_gettime")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Read(int clock, out Time time);

    [StructLayout(LayoutKind.Sequential)]
    private readonly struct Time
    {
        public readonly nint Seconds;
        public readonly nint Nanoseconds;
    }
}
