using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Checking;
using ClassKit.Wording.Counts;

namespace ClassKit.Cli.Reporting;

/// <summary>
/// Says what a check found: what stands in the way, what is most likely not meant, what is good to know, and one line for the rest.
/// </summary>
internal static class CheckLines
{
    public static int Write(Report report, ContentProof check, bool fine)
    {
        var exit = check.Problems.Count > 0 ? report.Problems(check.Problems) : ExitCode.Done;
        Say(report, "Most likely not meant:", check.Doubts);
        Say(report, "Good to know:", check.Notes);
        if (fine)
            Say(report, "As it most likely should be:", check.Fine);
        report.Output.WriteLine(
            $"{check.Items.Count} checked, {(check.Problems.Count > 0 ? Counted.Of(check.Problems.Count, "problem") : "no problem")} found{(check.Doubts.Count > 0 ? $", {check.Doubts.Count} most likely not meant" : "")}."
        );
        return exit;
    }

    private static void Say(Report report, string heading, IReadOnlyList<Diagnostic> told)
    {
        if (told.Count == 0)
            return;
        report.Output.WriteLine(heading);
        foreach (var one in told)
            report.Output.WriteLine($"  {RemedyWords.Of(one)}");
    }
}
