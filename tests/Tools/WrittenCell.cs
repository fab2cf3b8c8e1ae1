using System.IO.Compression;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace ClassKit.Tests;

/// <summary>A cell as it lies in the file of a workbook, whatever any program makes of it.</summary>
/// <param name="Sheet">The sheet's part.</param>
/// <param name="IsProtected">True if the sheet is protected.</param>
/// <param name="HasPassword">True if that asks for a password.</param>
/// <param name="Address">Such as B4.</param>
/// <param name="Formula">Null where there is none.</param>
/// <param name="Number">A number that was put there, as it is written; null for all else.</param>
/// <param name="IsLocked">True if it cannot be typed into where the sheet is protected.</param>
/// <param name="IsFramed">True with a line on all four sides.</param>
internal sealed partial record WrittenCell(
    string Sheet,
    bool IsProtected,
    bool HasPassword,
    string Address,
    string? Formula,
    string? Number,
    bool IsLocked,
    bool IsFramed
)
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>Numbers that stand there, in a cell or within a formula, with their decimals.</summary>
    public IEnumerable<string> Constants =>
        Formula is null ? (Number is null ? [] : [Number]) : Literal().Matches(Formula).Select(match => match.Value);

    /// <summary>Decimals of a number as it is written; many for one in scientific notation.</summary>
    public static int Decimals(string number) =>
        number.Contains('E', StringComparison.Ordinal) ? 15
        : number.IndexOf('.', StringComparison.Ordinal) is >= 0 and var point ? number.Length - point - 1
        : 0;

    /// <summary>Every cell of a workbook that has a style or holds something.</summary>
    public static IReadOnlyList<WrittenCell> Of(byte[] workbook)
    {
        using var package = new ZipArchive(new MemoryStream(workbook));
        var styles = Load(package, "xl/styles.xml");
        var framed = styles.Descendants(Main + "borders").Single().Elements().Select(IsFrame).ToList();
        var looks = styles
            .Descendants(Main + "cellXfs")
            .Single()
            .Elements()
            .Select(look =>
                (
                    IsLocked: look.Element(Main + "protection")?.Attribute("locked")?.Value is not ("0" or "false"),
                    IsFramed: framed[(int?)look.Attribute("borderId") ?? 0]
                )
            )
            .ToList();
        return
        [
            .. package
                .Entries.Where(entry => entry.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal))
                .SelectMany(entry => Cells(entry.FullName, Load(package, entry.FullName), looks)),
        ];
    }

    private static IEnumerable<WrittenCell> Cells(string name, XElement sheet, List<(bool IsLocked, bool IsFramed)> looks)
    {
        var protection = sheet.Element(Main + "sheetProtection");
        foreach (var cell in sheet.Descendants(Main + "c"))
        {
            var (isLocked, isFramed) = looks[(int?)cell.Attribute("s") ?? 0];
            yield return new(
                name,
                protection is not null && (string?)protection.Attribute("sheet") is "1" or "true",
                protection?.Attributes().Any(attribute => attribute.Name.LocalName is "password" or "hashValue") ?? false,
                (string)cell.Attribute("r")!,
                cell.Element(Main + "f")?.Value,
                (string?)cell.Attribute("t") is null or "n" ? cell.Element(Main + "v")?.Value : null,
                isLocked,
                isFramed
            );
        }
    }

    private static bool IsFrame(XElement border) =>
        new[] { "left", "right", "top", "bottom" }.All(side =>
            (string?)border.Element(Main + side)?.Attribute("style") is not (null or "none")
        );

    private static XElement Load(ZipArchive package, string part)
    {
        using var stream = package.Entries.Single(entry => entry.FullName == part).Open();
        return XElement.Load(stream);
    }

    [GeneratedRegex(@"(?<![A-Za-z$\d.])\d+(?:\.\d+)?(?:E[-+]?\d+)?(?![\d:(])")]
    private static partial Regex Literal();
}
