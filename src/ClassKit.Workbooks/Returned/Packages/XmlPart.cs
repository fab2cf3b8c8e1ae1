using System.Xml;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Walks the XML of a part from its first element to its last.</summary>
internal static class XmlPart
{
    private static XmlReaderSettings Settings =>
        new()
        {
            NameTable = new BoundedXml.Names(),
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,

            // Some programs write control characters that XML 1.0 has no place for. That is no reason to lose a student's work.
            CheckCharacters = false,
        };

    /// <summary>Reads a part; false if there is none of that name.</summary>
    public static bool TryRead(Package package, string part, Action<XmlReader> read)
    {
        using var stream = package.TryOpen(part);
        if (stream is null)
            return false;
        try
        {
            Walk(stream, part, read);
        }
        catch (InvalidDataException)
        {
            throw RefusalException.Damaged(new Damage.Unpacking(part));
        }

        return true;
    }

    private static void Walk(PartStream stream, string part, Action<XmlReader> read)
    {
        try
        {
            using var xml = XmlReader.Create(stream, Settings);
            read(xml);
            while (xml.Next()) { }
        }
        catch (XmlException problem)
        {
            // Broken on the way explains more than what came of it, so that the checksum is asked first.
            stream.Finish();

            // The reader stops at a document type before it reads anything.
            if (problem.LineNumber == 0)
                throw RefusalException.Damaged(new Damage.NoXml(part));
            throw RefusalException.Damaged(new Damage.BrokenXml(part, problem.LineNumber, problem.LinePosition));
        }
        catch (RefusalException refused) when (refused.Refusal is Refusal.Damaged)
        {
            stream.Finish();
            throw;
        }

        stream.Finish();
    }
}
