using System.Globalization;
using System.Text;
using System.Xml.Linq;
using ClassKit.Workbooks.Packages;

namespace ClassKit.Workbooks.Filling;

/// <summary>
/// Pastes pictures at the level of the package: the library that saves workbooks needs Windows for a sheet with a picture.
/// </summary>
/// <remarks>Source: ECMA-376 Part 1, 20.5 (spreadsheet drawings), 18.3.1.36 (the drawing of a sheet).</remarks>
internal static class Pictures
{
    private const string RelationshipId = "rIdDrawing";
    private const string ImagePart = "xl/media/image1.png";
    private const string DrawingType = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/drawing";
    private const string ImageType = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/image";
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly XNamespace Documents = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static readonly XNamespace Relations = "http://schemas.openxmlformats.org/package/2006/relationships";

    public static byte[] Paste(byte[] package, IReadOnlyList<PastePicture> pictures)
    {
        if (pictures.Count == 0)
            return package;
        var parts = PackageParts.Read(package);
        var sheets = PackageParts.SheetParts(package);
        parts[ImagePart] = DoughPicture.Png;
        ContentTypes.AddDefault(parts, "png", "image/png");
        var number = 0;
        foreach (var sheet in pictures.GroupBy(picture => sheets[picture.TopLeft.Sheet]))
            Draw(parts, sheet.Key, ++number, [.. sheet]);
        return PackageParts.Write(parts);
    }

    private static void Draw(SortedDictionary<string, byte[]> parts, string sheetPart, int number, IReadOnlyList<PastePicture> pictures)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"drawing{number}.xml");
        parts["xl/drawings/" + name] = Encoding.UTF8.GetBytes(Drawing(pictures));
        parts[$"xl/drawings/_rels/{name}.rels"] = Relationships("rId1", ImageType, "/" + ImagePart);
        ContentTypes.Add(parts, "xl/drawings/" + name, "application/vnd.openxmlformats-officedocument.drawing+xml");

        var sheet = PartXml.Load(parts[sheetPart]);
        var drawing = new XElement(Main + "drawing", new XAttribute(Documents + "id", RelationshipId));
        if (sheet.Root!.Element(Main + "tableParts") is { } tables)
            tables.AddBeforeSelf(drawing);
        else
            sheet.Root.Add(drawing);
        parts[sheetPart] = PartXml.Save(sheet);
        parts[$"xl/worksheets/_rels/{sheetPart[(sheetPart.LastIndexOf('/') + 1)..]}.rels"] = Relationships(
            RelationshipId,
            DrawingType,
            "/xl/drawings/" + name
        );
    }

    private static byte[] Relationships(string id, string type, string target) =>
        PartXml.Save(
            new XDocument(
                new XElement(
                    Relations + "Relationships",
                    new XElement(
                        Relations + "Relationship",
                        new XAttribute("Id", id),
                        new XAttribute("Type", type),
                        new XAttribute("Target", target)
                    )
                )
            )
        );

    private static string Drawing(IReadOnlyList<PastePicture> pictures)
    {
        var anchors = string.Concat(
            pictures.Select(
                (picture, index) =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"""
                        <xdr:oneCellAnchor>
                          <xdr:from><xdr:col>{picture.TopLeft.Column - 1}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>{picture.TopLeft.Row
                            - 1}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from>
                          <xdr:ext cx="{DoughPicture.Width * 9525}" cy="{DoughPicture.Height * 9525}"/>
                          <xdr:pic>
                            <xdr:nvPicPr><xdr:cNvPr id="{index + 2}" name="Picture {index
                            + 1}" descr="A round dough on a dark bench"/><xdr:cNvPicPr/></xdr:nvPicPr>
                            <xdr:blipFill><a:blip r:embed="rId1"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill>
                            <xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext cx="{DoughPicture.Width * 9525}" cy="{DoughPicture.Height
                            * 9525}"/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr>
                          </xdr:pic>
                          <xdr:clientData/>
                        </xdr:oneCellAnchor>
                        """
                    )
            )
        );
        return $"""
            <?xml version="1.0" encoding="utf-8"?>
            <xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" xmlns:r="{Documents}">
            {anchors}
            </xdr:wsDr>
            """;
    }
}
