namespace ClassKit.Content.Sheets;

/// <summary>The lines of a text with their ends, whichever these are: put together again they are the text.</summary>
internal static class RawLines
{
    public static List<string> Of(string text)
    {
        List<string> lines = [];
        for (var start = 0; start < text.Length;)
        {
            var at = text.AsSpan(start).IndexOfAny('\r', '\n');
            var end = at < 0 ? text.Length : start + at + (text[start + at] == '\r' && start + at + 1 < text.Length && text[start + at + 1] == '\n' ? 2 : 1);
            lines.Add(text[start..end]);
            start = end;
        }
        return lines;
    }
}
