using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using Markdig;
using Markdig.Syntax;

namespace ClassKit.Content.Outline;

/// <summary>A Markdown file as authors think of it: a title, what stands below it, and sections.</summary>
/// <param name="Title">The heading with one <c>#</c>.</param>
/// <param name="Opening">Everything between the title and the first section.</param>
/// <param name="Sections">Each heading with two <c>#</c> and what follows it.</param>
/// <param name="Deeper">Every heading with more than two <c>#</c>, as written.</param>
internal sealed record Document(Located Title, Section Opening, IReadOnlyList<Section> Sections, IReadOnlyList<Located> Deeper)
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UsePipeTables().Build();

    /// <summary>The document, or null with the reason noted.</summary>
    public static Document? Read(string markdown, ProblemList problems)
    {
        if (Parse(markdown, problems) is not { } blocks)
            return null;
        var titles = blocks.OfType<HeadingBlock>().Where(heading => heading.Level == 1).ToList();
        if (titles.Count == 0)
            problems.Add(null, "There is no title", "Begin the text with a line `# Title`.");
        foreach (var extra in titles.Skip(1))
            problems.Add(extra.Line + 1, "This is a second title", "Only the title has one `#`; begin a section with `##`.");
        var before = blocks.TakeWhile(block => block is not HeadingBlock).FirstOrDefault();
        if (titles.Count > 0 && before is not null)
            problems.Add(before.Line + 1, "There is text above the title", "Move it below the line with `#`.");

        var whole = new Section(titles.Count > 0 ? Section.TextOf(titles[0], markdown) : new("", 1), blocks, markdown);
        var (opening, sections) = whole.Split(2);
        return new(
            whole.Heading,
            opening with
            {
                Blocks = [.. opening.Blocks.Where(block => block is not HeadingBlock { Level: 1 })],
            },
            sections,
            [
                .. blocks
                    .OfType<HeadingBlock>()
                    .Where(heading => heading.Level > 2)
                    .Select(heading => new Located(
                        $"{new string('#', heading.Level)} {Section.TextOf(heading, markdown).Text}",
                        heading.Line + 1
                    )),
            ]
        );
    }

    private static List<Block>? Parse(string markdown, ProblemList problems)
    {
        try
        {
            return [.. Markdown.Parse(markdown, Pipeline)];
        }
        catch (ArgumentException)
        {
            // Markdig's only complaint about a text: more than a hundred levels of lists, quotes or emphasis.
            problems.Add(
                null,
                "The text is nested deeper than any page needs",
                "Look for a long run of `>`, `[` or `*`, or for lists within lists."
            );
            return null;
        }
    }
}
