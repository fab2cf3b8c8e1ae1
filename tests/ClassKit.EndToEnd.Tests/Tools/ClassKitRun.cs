using ClassKit.Cli;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>One run of the command line, in this process.</summary>
/// <param name="ExitCode">What it ended with.</param>
/// <param name="Output">What went to stdout.</param>
/// <param name="Problems">What went to stderr.</param>
internal sealed record ClassKitRun(int ExitCode, string Output, string Problems)
{
    public static ClassKitRun Of(params string[] arguments)
    {
        using var output = new StringWriter();
        using var problems = new StringWriter();
        var exitCode = CommandLine.Run(arguments, output, problems);
        return new(exitCode, output.ToString(), problems.ToString());
    }

    /// <summary>Fails the test unless all went well.</summary>
    public ClassKitRun Done()
    {
        Assert.True(ExitCode == 0, $"exit code {ExitCode}\n{Output}\n{Problems}");
        Assert.Equal("", Problems);
        return this;
    }
}
