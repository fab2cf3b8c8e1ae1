using ClassKit.Content.Sources;
using Markdig.Syntax;

namespace ClassKit.Content.Outline;

/// <summary>A heading and the blocks below it.</summary>
/// <param name="Heading">The heading's text.</param>
/// <param name="Blocks">What follows, up to the next heading of the same rank.</param>
/// <param name="Source">The text of the whole file, which the blocks' spans count in.</param>
internal sealed record Section(Located Heading, IReadOnlyList<Block> Blocks, string Source)
{
    public int Line => Heading.Line;

    /// <summary>The Markdown as written, without the heading.</summary>
    public string Markdown => Blocks.Count == 0 ? "" : Slice(Source, Blocks[0].Span.Start, Blocks[^1].Span.End).Trim();

    /// <summary>The text as one line of prose.</summary>
    public string Prose => Wording.Prose.OneLine(Markdown);

    /// <summary>What stands before the first heading of a rank, and a section for each.</summary>
    public (Section Opening, IReadOnlyList<Section> Parts) Split(int rank)
    {
        var starts = Enumerable.Range(0, Blocks.Count).Where(i => Blocks[i] is HeadingBlock heading && heading.Level == rank).ToList();
        var parts = starts.Select(
            (start, n) =>
                new Section(
                    TextOf((HeadingBlock)Blocks[start], Source),
                    [.. Blocks.Skip(start + 1).Take((n + 1 < starts.Count ? starts[n + 1] : Blocks.Count) - start - 1)],
                    Source
                )
        );
        return (this with { Blocks = [.. Blocks.Take(starts.Count > 0 ? starts[0] : Blocks.Count)] }, [.. parts]);
    }

    public static Located TextOf(HeadingBlock heading, string source) =>
        new(Slice(source, heading.Span.Start, heading.Span.End).Trim().Trim('#').Trim(), heading.Line + 1);

    /// <summary>The text of a block as one line, the way it was written.</summary>
    public static Located TextOf(Block block, string source) =>
        new(Wording.Prose.OneLine(Slice(source, block.Span.Start, block.Span.End)), block.Line + 1);

    public static string Slice(string source, int start, int end) =>
        end < start || start < 0 ? "" : source[start..Math.Min(end + 1, source.Length)];
}
