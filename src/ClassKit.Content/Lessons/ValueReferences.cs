using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Lessons;

/// <summary>Checks the computed values that a lesson's text names in braces.</summary>
internal static partial class ValueReferences
{
    /// <summary>Notes every name that stands for nothing.</summary>
    /// <param name="markdown">The file below its front matter, each line where it stands in the file.</param>
    /// <param name="known">What can be named there.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static void Check(string markdown, IReadOnlyList<string> known, ProblemList problems)
    {
        foreach (var match in Braces().Matches(markdown).Where(match => !known.Contains(match.Groups["name"].Value)))
            problems.Add(markdown.AsSpan(0, match.Index).Count('\n') + 1, $"`{match.Value}` stands for no computed value", Advice(match.Groups["name"].Value, known));
    }

    /// <summary>The nearest name; where there is none, those of the formula that is named, or of the class.</summary>
    private static string Advice(string name, IReadOnlyList<string> known)
    {
        var point = name.IndexOf('.', StringComparison.Ordinal);
        var formula = point > 0 ? name[..(point + 1)] : "";
        var near = known.Where(each => formula.Length > 0 ? each.StartsWith(formula, StringComparison.Ordinal) : !each.Contains('.', StringComparison.Ordinal)).ToList();
        return NearestWord.Advice(name, near.Count > 0 ? near : known);
    }

    [GeneratedRegex(@"\{(?<name>[^{}\n]*)\}")]
    private static partial Regex Braces();
}
