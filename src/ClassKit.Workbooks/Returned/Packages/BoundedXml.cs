using System.Text;
using System.Xml;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Walks XML without letting it make us keep more than any spreadsheet program writes: levels, names, lengths of texts.</summary>
internal static class BoundedXml
{
    /// <summary>Levels of elements; spreadsheet programs need fewer than 20, and a reader keeps every open one.</summary>
    private const int Deepest = 100;

    /// <summary>The characters of one text in the file, formulas and dates included; far more than a cell can hold.</summary>
    private const int LongestText = 1024 * 1024;

    /// <summary>Moves to the next node.</summary>
    /// <returns>False at the end.</returns>
    public static bool Next(this XmlReader xml)
    {
        var more = xml.Read();
        if (xml.Depth > Deepest)
            throw RefusalException.TooLarge(Excess.Depth, Deepest);
        return more;
    }

    /// <summary>Adds the text of a node to what there is.</summary>
    public static void AppendValue(this StringBuilder text, XmlReader xml)
    {
        if (xml.NodeType == XmlNodeType.CDATA)
            AppendChunks(text, xml);
        else
            text.Append(xml.Value);
        if (text.Length > LongestText)
            throw TooLong;
    }

    /// <summary>Adds a text to what there is.</summary>
    public static StringBuilder AppendBounded(this StringBuilder text, string more)
    {
        text.Append(more);
        return text.Length > LongestText ? throw TooLong : text;
    }

    private static RefusalException TooLong => RefusalException.TooLarge(Excess.TextCharacters, LongestText);

    /// <summary>A section of its own may be of any length, so that it is taken piece by piece.</summary>
    private static void AppendChunks(StringBuilder text, XmlReader xml)
    {
        var piece = new char[4096];
        for (int read; (read = xml.ReadValueChunk(piece, 0, piece.Length)) > 0; )
        {
            text.Append(piece, 0, read);
            if (text.Length > LongestText)
                throw TooLong;
        }
    }

    /// <summary>The names of elements and attributes, which a reader keeps for good.</summary>
    internal sealed class Names : NameTable
    {
        private const int Most = 10_000;

        private int _count;

        public override string Add(char[] key, int start, int len)
        {
            if (Get(key, start, len) is { } known)
                return known;
            if (++_count > Most)
                throw RefusalException.TooLarge(Excess.XmlNames, Most);
            return base.Add(key, start, len);
        }
    }
}
