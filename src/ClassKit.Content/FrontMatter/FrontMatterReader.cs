using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace ClassKit.Content.FrontMatter;

/// <summary>Walks the YAML of a front matter, which is flat: keys with a value or a list of values.</summary>
/// <remarks>Events, not nodes: they come with lines, and no nesting in the file can exhaust our stack.</remarks>
internal static partial class FrontMatterReader
{
    private const string Shape = "Each line reads `key: value`; a list reads `key: [one, two]`.";

    public static Fields Read(string yaml, ProblemList problems)
    {
        var fields = new List<Field>();
        var before = problems.Count;
        // What YAML would blame on the line after, or on nobody.
        if (LineWithoutShape(yaml) is var (at, found, advice))
        {
            problems.Add(at, found, advice);
            return new(fields, isWhole: false, problems);
        }
        var parser = new Parser(new StringReader(yaml));
        try
        {
            Walk(parser, fields, problems);
        }
        // The library's own slip: it loses its state in a list that is opened and never closed.
        catch (Exception broken) when (broken is YamlException or InvalidOperationException)
        {
            problems.Add(
                (int)((broken as YamlException)?.Start.Line ?? parser.Current?.Start.Line ?? 1),
                "The lines at the top cannot be read from here on",
                $"{Shape} Put quotes around a value that holds a colon and a space, or that begins with a sign such as %, [, {{ or @."
            );
        }
        return new(fields, isWhole: problems.Count == before, problems);
    }

    /// <summary>The first line that begins with a tab, or that stands at the left edge and holds no colon.</summary>
    private static (int Line, string Found, string Advice)? LineWithoutShape(string yaml)
    {
        var lines = yaml.Split('\n');
        for (var at = 0; at < lines.Length; at++)
        {
            var line = lines[at].TrimEnd();
            if (line.StartsWith('\t'))
                return (at + 1, "This line begins with a tab", $"Take it away. {Shape}");
            if (Glued().Match(line) is { Success: true } glued)
                return (
                    at + 1,
                    $"`{Prose.Excerpt(line)}` has no blank behind its colon",
                    $"Write `{glued.Groups["key"].Value}: {glued.Groups["value"].Value}`."
                );
            if (line.Length > 0 && char.IsLetter(line[0]) && !line.Contains(':', StringComparison.Ordinal))
                return (at + 1, $"`{Prose.Excerpt(line)}` has no colon", Shape);
        }
        return null;
    }

    [GeneratedRegex(@"^(?<key>[A-Za-z][A-Za-z -]*):(?<value>[^\s:/].*)$")]
    private static partial Regex Glued();

    private static void Walk(Parser parser, List<Field> fields, ProblemList problems)
    {
        parser.Consume<StreamStart>();
        if (parser.Accept<StreamEnd>(out _))
            return;
        parser.Consume<DocumentStart>();
        if (!parser.TryConsume<MappingStart>(out _))
        {
            var text = parser.Consume<ParsingEvent>();
            problems.Add((int)text.Start.Line, "The lines at the top hold no keys", Shape);
            return;
        }
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            if (ReadField(parser, problems) is not { } field)
                return;
            if (fields.Find(known => known.Key == field.Key) is { } first)
                problems.Add(field.Line, $"`{field.Key}` is here a second time; the first is in line {first.Line}", "Keep one of them.");
            else
                fields.Add(field);
        }
    }

    private static Field? ReadField(Parser parser, ProblemList problems)
    {
        if (!parser.TryConsume<Scalar>(out var key))
            return Nested(parser, problems);
        var line = (int)key.Start.Line;
        if (parser.TryConsume<Scalar>(out var value))
            return new(key.Value, line, IsList: false, [new(Prose.OneLine(value.Value), (int)value.Start.Line)]);
        if (!parser.TryConsume<SequenceStart>(out _))
            return Nested(parser, problems);
        var items = new List<Located>();
        while (!parser.TryConsume<SequenceEnd>(out _))
        {
            if (!parser.TryConsume<Scalar>(out var item))
                return Nested(parser, problems);
            items.Add(new(Prose.OneLine(item.Value), (int)item.Start.Line));
        }
        return new(key.Value, line, IsList: true, items);
    }

    private static Field? Nested(Parser parser, ProblemList problems)
    {
        problems.Add((int)(parser.Current?.Start.Line ?? 1), "The lines at the top go deeper than one level here", Shape);
        return null;
    }
}
