using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>
/// More than three hundred files that no student should hand in and someone will, the same ones each time. All are invented here.
/// </summary>
internal static class Corpus
{
    private const int MutationsEach = 40;

    /// <summary>A workbook of Ada's with all answers right, which every file was made from.</summary>
    public static byte[] Workbook { get; } = Plain(SmallClass.Filled(SmallClass.Ada));

    /// <summary>The same as an OpenDocument spreadsheet, written by hand.</summary>
    public static byte[] OpenDocument { get; } = OpenDocuments.Of(SmallClass.Ada);

    public static IReadOnlyList<HostileFile> Files { get; } =
    [
        .. Mutated("xlsx", Workbook)
            .Concat(Mutated("ods", OpenDocument))
            .Concat(XmlTricks.InEveryPart)
            .Select(file => file with { IsOneOfMany = true }),
        .. Bombs.Files,
        .. XmlTricks.Files,
        .. PathTricks.Files,
        .. Dimensions.Files,
        .. FormulaStorms.Files,
        .. OpenDocuments.Files,
        .. Junk.Files,
    ];

    private static IEnumerable<HostileFile> Mutated(string ending, byte[] whole)
    {
        for (var seed = 0; seed < MutationsEach; seed++)
        {
            var at = seed;
            yield return new($"bytes changed {at}.{ending}", () => new Mutation(at).Bytes(whole));
            yield return new($"headers changed {at}.{ending}", () => new Mutation(at).Headers(whole));
            if (at % 2 == 0)
                yield return new($"pieces moved {at}.{ending}", () => new Mutation(at).Pieces(whole));
            yield return new($"xml changed {at}.{ending}", () =>
            {
                var mutation = new Mutation(at);
                var parts = Parts.Of(whole);
                var part = mutation.Pick([.. parts.Names.Where(name => name != "mimetype")]);
                return parts.Change(part, mutation.Xml).Pack();
            });
        }
    }

    /// <summary>Element names without prefixes, which are easier to change.</summary>
    private static byte[] Plain(byte[] workbook)
    {
        var parts = Parts.Of(workbook);
        foreach (var part in parts.Names)
            parts = parts.Change(part, xml =>
                xml.Replace("<x:", "<", StringComparison.Ordinal)
                    .Replace("</x:", "</", StringComparison.Ordinal)
                    .Replace("xmlns:x=", "xmlns=", StringComparison.Ordinal)
            );
        return parts.Pack();
    }
}
