using System.Globalization;
using System.Text;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace ClassKit.Workbooks.Look;

/// <summary>
/// Markdown as the plain lines that a cell can hold: emphasis dropped, lists with their bullets and numbers, tables a line a row.
/// </summary>
internal static class PlainText
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().Build();

    public static string From(string markdown)
    {
        var lines = new List<string>();
        foreach (var block in Markdown.Parse(markdown, Pipeline))
        {
            if (lines.Count > 0)
                lines.Add("");
            Write(block, "", lines);
        }

        return string.Join('\n', lines);
    }

    private static void Write(Block block, string indent, List<string> lines)
    {
        switch (block)
        {
            case ListBlock list:
                WriteList(list, indent, lines);
                break;
            case TableRow row:
                lines.Add(indent + string.Join(" | ", row.OfType<TableCell>().Select(CellText)));
                break;
            case ContainerBlock container:
                foreach (var child in container)
                    Write(child, indent, lines);
                break;
            case CodeBlock code:
                lines.AddRange(code.Lines.ToString().Split('\n').Select(line => indent + line.TrimEnd()));
                break;
            case LeafBlock { Inline: { } inline }:
                lines.AddRange(Inlines(inline).Split('\n').Select(line => indent + line));
                break;
        }
    }

    private static void WriteList(ListBlock list, string indent, List<string> lines)
    {
        var number = int.TryParse(list.OrderedStart, NumberStyles.None, CultureInfo.InvariantCulture, out var start) ? start : 1;
        foreach (var item in list.OfType<ListItemBlock>())
        {
            var marker = list.IsOrdered ? string.Create(CultureInfo.InvariantCulture, $"{number++}. ") : "• ";
            var from = lines.Count;
            Write(item, indent + new string(' ', marker.Length), lines);
            if (lines.Count > from)
                lines[from] = indent + marker + lines[from].TrimStart();
        }
    }

    private static string CellText(TableCell cell) =>
        string.Join(' ', cell.OfType<LeafBlock>().Select(leaf => leaf.Inline is null ? "" : Inlines(leaf.Inline)));

    private static string Inlines(ContainerInline container)
    {
        var text = new StringBuilder();
        foreach (var inline in container)
        {
            text.Append(
                inline switch
                {
                    LiteralInline literal => literal.Content.ToString(),
                    CodeInline code => code.Content,
                    LineBreakInline { IsHard: true } => "\n",
                    LineBreakInline => " ",
                    HtmlEntityInline entity => entity.Transcoded.ToString(),
                    AutolinkInline link => link.Url,
                    ContainerInline nested => Inlines(nested),
                    _ => "",
                }
            );
        }

        return text.ToString();
    }
}
