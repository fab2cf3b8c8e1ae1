using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>Reads <c>20 to 60</c>: between what digits, steps and carries of every variant must count.</summary>
internal static partial class EffortText
{
    public static EffortBand? Read(Located text, ProblemList problems)
    {
        var match = Band().Match(text.Text);
        if (
            match.Success
            && int.TryParse(match.Groups["low"].Value, out var low)
            && int.TryParse(match.Groups["high"].Value, out var high)
            && low < high
        )
            return new(low, high);
        problems.Add(
            text.Line,
            $"`effort` is `{text.Text}`",
            "Write two whole numbers, the lower one first, such as `effort: 20 to 60`; or leave the line out.",
            Remedy.ShowDraws
        );
        return null;
    }

    [GeneratedRegex("^(?<low>[0-9]{1,6}) to (?<high>[0-9]{1,6})$")]
    private static partial Regex Band();
}
