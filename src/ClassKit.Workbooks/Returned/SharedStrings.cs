namespace ClassKit.Workbooks;

/// <summary>The texts that cells refer to by number.</summary>
internal static class SharedStrings
{
    public static IReadOnlyList<string> Read(Package package, string? part, ReadLimits limits)
    {
        var strings = new List<string>();
        if (part is null) return strings;
        XmlPart.TryRead(package, part, xml =>
        {
            while (xml.Read())
            {
                if (!xml.IsAt("si")) continue;
                var text = xml.ReadStringItem();
                if (text.Length > limits.TextLength) throw RefusalException.TooLarge($"a text in it has more than {limits.TextLength} characters");
                strings.Add(text);
            }
        });
        return strings;
    }
}
