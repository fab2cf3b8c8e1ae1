using System.Diagnostics;

namespace ClassKit.Workbooks.Tests.Tools;

/// <summary>Programs that are not ours and that some tests need. Where one is missing, a test is skipped, or fails if CLASSKIT_REQUIRE_TOOLS is 1.</summary>
internal static class Tool
{
    private static bool IsRequired => Environment.GetEnvironmentVariable("CLASSKIT_REQUIRE_TOOLS") == "1";

    /// <summary>Runs a program to its end and gives what it printed.</summary>
    public static string Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)}\n{output}\n{errors.Result}");
        return output;
    }

    /// <summary>True if a program starts and ends well with these arguments.</summary>
    public static bool Works(string program, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    public static void Require(bool isThere, string what)
    {
        if (IsRequired) Assert.True(isThere, what + " is missing, and CLASSKIT_REQUIRE_TOOLS is 1");
        else Assert.SkipUnless(isThere, what + " is not installed");
    }
}
