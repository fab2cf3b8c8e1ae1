using ClassKit.Content.Diagnostics;
using Markdig.Syntax;

namespace ClassKit.Content.Outline;

/// <summary>Reads sections that are a list.</summary>
internal static class Lists
{
    /// <summary>The items of a section that must be one list and nothing else.</summary>
    public static IReadOnlyList<ListEntry> Entries(Section? section, ProblemList problems)
    {
        if (section is null)
            return [];
        foreach (var stray in section.Blocks.Where(block => block is not ListBlock))
            problems.Add(
                stray.Line + 1,
                $"This does not belong to the list in `{section.Heading.Text}`",
                "Begin every item with `- ` or `1. `, and indent further lines of it."
            );
        return
        [
            .. section
                .Blocks.OfType<ListBlock>()
                .SelectMany(list => list.OfType<ListItemBlock>())
                .Select(item => Entry(item, section.Source)),
        ];
    }

    /// <summary>The items as plain lines.</summary>
    public static IReadOnlyList<string> Lines(Section? section, ProblemList problems) =>
        [.. Entries(section, problems).Select(entry => entry.Text.Text)];

    private static ListEntry Entry(ListItemBlock item, string source)
    {
        var text = item.OfType<ParagraphBlock>().Select(paragraph => Section.TextOf(paragraph, source)).ToList();
        var quotes = item.OfType<QuoteBlock>()
            .SelectMany(quote => quote)
            .Select(inner => Section.TextOf(inner, source).Text.Replace(" > ", " ", StringComparison.Ordinal));
        return new(new(string.Join(' ', text.Select(paragraph => paragraph.Text)), item.Line + 1), string.Join(' ', quotes));
    }
}
