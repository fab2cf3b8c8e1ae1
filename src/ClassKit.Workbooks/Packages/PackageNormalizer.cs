namespace ClassKit.Workbooks.Packages;

/// <summary>
/// Rewrites a freshly saved .xlsx so that it says what is in it and nothing of when, where and by which process it was saved.
/// </summary>
/// <remarks>
/// The libraries that save packages stamp the time on every entry, put the time into the document properties, and draw random
/// names for the properties part and its relationship. All are replaced, so that the same content gives the same bytes.
/// </remarks>
public static class PackageNormalizer
{
    /// <summary>The same package with fixed times, order, names and properties.</summary>
    /// <param name="package">A package saved by this program; returned workbooks are not to be trusted with this.</param>
    public static byte[] Normalize(byte[] package) => Normalize(package, StoredValues.None);

    /// <summary>The same, with what every formula comes to stored beside it.</summary>
    /// <param name="package">A package saved by this program.</param>
    public static byte[] NormalizeWithValues(byte[] package) => Normalize(package, StoredValues.Of(package));

    private static byte[] Normalize(byte[] package, StoredValues values)
    {
        ArgumentNullException.ThrowIfNull(package);
        var parts = PackageParts.Read(package);
        var properties = CoreProperties.TakeFrom(parts);
        ContentTypes.Rewrite(parts);
        RootRelationships.Rewrite(parts);
        properties.PutInto(parts);
        SpreadsheetTidying.Rewrite(parts, values);
        return PackageParts.Write(parts);
    }
}
