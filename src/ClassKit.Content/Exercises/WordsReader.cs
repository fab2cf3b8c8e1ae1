using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>
/// Reads what makes a part one that is answered in own words: <c>- Answer with: words</c>, and what is looked for in a good answer.
/// </summary>
internal static class WordsReader
{
    /// <summary>What <c>Answer with</c> says of such a part.</summary>
    public const string Kind = "words";

    private const string LookFor = "Look for";

    /// <summary>What to do where the section is missing.</summary>
    public const string Advice =
        $"Below the list, say under `### {LookFor}` what a good answer says: you give its points yourself, and that stands beside the answers.";

    /// <summary>True for a part that is meant to be answered in own words.</summary>
    public static bool IsMeant(Sections sections) => sections.Has(LookFor);

    /// <summary>What is looked for, or null with the reasons noted.</summary>
    public static WordsAsked? Read(Entries entries, Sections sections, ProblemList problems)
    {
        if (entries.Required("Answer with") is { } kind && kind.Text != Kind)
            problems.Add(
                kind.Line,
                $"`Answer with` is `{kind.Text}`, and the part has a section `{LookFor}`",
                $"Write `{Kind}`, or take the section out."
            );
        var prose = sections.Required(LookFor)?.Prose;
        sections.Finish();
        return prose is null ? null : new(prose);
    }
}
