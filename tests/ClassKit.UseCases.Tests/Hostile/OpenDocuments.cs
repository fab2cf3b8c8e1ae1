using System.Globalization;
using System.Text;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>The same ideas in OpenDocument spreadsheets, whose rows, cells and spaces are written once with a count.</summary>
internal static class OpenDocuments
{
    private const string Namespaces =
        """xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" """;
    private const string Laughs = """<!DOCTYPE a [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]>""";

    public static IEnumerable<HostileFile> Files =>
        [
            new(
                "rows and columns repeated to the last.ods",
                () =>
                    With(
                        """<table:table-row table:number-rows-repeated="1048576"><table:table-cell table:number-columns-repeated="16384" office:value-type="float" office:value="1"/></table:table-row>"""
                    ),
                true
            ),
            new("nothing repeated to the last.ods", () =>
                With(
                    """<table:table-row table:number-rows-repeated="1048576"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>"""
                )
            ),
            new("repeated beyond the last.ods", () =>
                With(
                    Repeat(
                        """<table:table-row table:number-rows-repeated="2147483647"><table:table-cell table:number-columns-repeated="2147483647"/></table:table-row>""",
                        1_000
                    )
                )
            ),
            new("repeated below zero.ods", () =>
                With(
                    """<table:table-row table:number-rows-repeated="-5"><table:table-cell table:number-columns-repeated="1E9" office:value-type="float" office:value="1"/></table:table-row>"""
                )
            ),
            new(
                "spaces written with a count.ods",
                () =>
                    With(
                        "<table:table-row><table:table-cell office:value-type=\"string\"><text:p>"
                            + Repeat("<text:s text:c=\"1000\"/>", 2_000_000)
                            + "</text:p></table:table-cell></table:table-row>"
                    ),
                true
            ),
            new(
                "a million paragraphs.ods",
                () =>
                    With(
                        "<table:table-row><table:table-cell office:value-type=\"string\">"
                            + Repeat("<text:p>x</text:p>", 1_000_000)
                            + "</table:table-cell></table:table-row>"
                    ),
                true
            ),
            new("a formula repeated a quarter of a million times.ods", () =>
                With(
                    """<table:table-row table:number-rows-repeated="1000"><table:table-cell table:number-columns-repeated="240" table:formula="of:=SUM([.A1:.Z99])" office:value-type="float" office:value="1"/></table:table-row>"""
                )
            ),
            new("spans over the whole sheet.ods", () =>
                With(
                    Repeat(
                        """<table:table-row><table:table-cell table:number-columns-spanned="16384" table:number-rows-spanned="1048576" office:value-type="float" office:value="1"/></table:table-row>""",
                        2_000
                    )
                )
            ),
            new("tables within tables.ods", () => With(Repeat("<table:table table:name=\"t\">", 100_000))),
            new("ten thousand tables.ods", () => Document(Repeat("<table:table table:name=\"t\"/>", 10_000)), true),
            new(
                "a quarter of a million names.ods",
                () =>
                    Document(
                        "<table:table table:name=\"t\"/><table:named-expressions>"
                            + Repeat("<table:named-expression table:name=\"n\" table:expression=\"of:=1\"/>", 250_000)
                            + "</table:named-expressions>"
                    ),
                true
            ),
            new("brackets that never close.ods", () => Formula("of:=" + new string('[', 8_000))),
            new("quotes that never close.ods", () => Formula("of:=&quot;" + new string('\'', 8_000))),
            new("references to nowhere.ods", () => Formula("of:=[#REF!]+[.]+[]+[$.]+['a'.]+[.A1:.]+[file:///etc/passwd#$a.A1]")),
            new("arrays in arrays.ods", () => Formula("of:=SUM({1;{2|3};4})+" + new string('{', 4_000))),
            new("a formula of another program.ods", () => Formula("msoxl:=SUM(A1:XFD1048576)")),
            new("a formula of another century.ods", () => Formula("oooc:=" + string.Join('+', Enumerable.Repeat("[.A1]", 1_500)))),
            new("times without end.ods", () =>
                With(
                    """<table:table-row><table:table-cell office:value-type="time" office:time-value="P99999999999999999Y"/><table:table-cell office:value-type="date" office:date-value="-99999-99-99"/></table:table-row>"""
                )
            ),
            new(
                "a number that is none.ods",
                () => With("""<table:table-row><table:table-cell office:value-type="float" office:value="twelve"/></table:table-row>"""),
                true
            ),
            new("entities.ods", () => Packed(Laughs + Content("<table:table table:name=\"&b;\"/>")), true),
            new("entities in the manifest.ods", () => Packed(Content("<table:table table:name=\"t\"/>"), Laughs + "<m/>"), true),
            new(
                "encrypted.ods",
                () =>
                    Packed(
                        Content("<table:table table:name=\"t\"/>"),
                        "<manifest:manifest xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\"><manifest:file-entry><manifest:encryption-data/></manifest:file-entry></manifest:manifest>"
                    ),
                true
            ),
            new("ten million levels.ods", () => Document(Repeat("<a>", 10_000_000))),
            new("an attribute of 60 MB.ods", () => Document($"<table:table table:name=\"{new string('x', 60_000_000)}\"/>"), true),
            new("no tables.ods", () => Document(""), true),
            new("no content.ods", () => Parts.Of(Corpus.OpenDocument).With("content.xml", "").Pack(), true),
            new(
                "a hundred megabytes of spaces.ods",
                () => Document(new string(' ', 100_000_000) + "<table:table table:name=\"t\"/>"),
                true
            ),
        ];

    /// <summary>A student's workbook as it would come back, with givens, tags and no answers.</summary>
    public static byte[] Of(DealtStudent student)
    {
        var cells = SmallClass
            .Layout.GivensOf(student)
            .SelectMany(given =>
                new[]
                {
                    (given.Address with { Column = PracticeColumns.Usual.Tag }, Text(given.Tag)),
                    (given.Address, Number((double)given.Value)),
                }
            )
            .Concat(
                SmallClass
                    .Layout.AnswersOf(student)
                    .SelectMany(answer =>
                        new[]
                        {
                            (answer.Address with { Column = PracticeColumns.Usual.Tag }, Text(answer.Tag)),
                            (answer.Address, Number(answer.Expected)),
                        }
                    )
            )
            .Append((StartPlan.Usual.StudentId, Text(student.Who.Id)));
        var tables = new StringBuilder();
        foreach (var sheet in cells.GroupBy(cell => cell.Item1.Sheet))
        {
            tables.Append(CultureInfo.InvariantCulture, $"<table:table table:name=\"{sheet.Key}\">");
            var at = 1;
            foreach (var row in sheet.GroupBy(cell => cell.Item1.Row).OrderBy(row => row.Key))
            {
                if (row.Key > at)
                    tables.Append(
                        CultureInfo.InvariantCulture,
                        $"<table:table-row table:number-rows-repeated=\"{row.Key - at}\"><table:table-cell/></table:table-row>"
                    );
                tables.Append("<table:table-row>");
                var column = 1;
                foreach (var cell in row.OrderBy(cell => cell.Item1.Column))
                {
                    if (cell.Item1.Column > column)
                        tables.Append(
                            CultureInfo.InvariantCulture,
                            $"<table:table-cell table:number-columns-repeated=\"{cell.Item1.Column - column}\"/>"
                        );
                    tables.Append(cell.Item2);
                    column = cell.Item1.Column + 1;
                }

                tables.Append("</table:table-row>");
                at = row.Key + 1;
            }

            tables.Append("</table:table>");
        }

        return Document(tables.ToString());
    }

    private static string Text(string text) => $"<table:table-cell office:value-type=\"string\"><text:p>{text}</text:p></table:table-cell>";

    private static string Number(double number) =>
        string.Create(CultureInfo.InvariantCulture, $"<table:table-cell office:value-type=\"float\" office:value=\"{number:R}\"/>");

    private static string Repeat(string what, int times) => new StringBuilder().Insert(0, what, times).ToString();

    private static byte[] With(string rows) => Document($"<table:table table:name=\"t\">{rows}</table:table>");

    private static byte[] Formula(string formula) =>
        With(
            $"<table:table-row><table:table-cell table:formula=\"{formula}\" office:value-type=\"float\" office:value=\"1\"/></table:table-row>"
        );

    private static string Content(string tables) =>
        $"<office:document-content {Namespaces}><office:body><office:spreadsheet>{tables}</office:spreadsheet></office:body></office:document-content>";

    private static byte[] Document(string tables) => Packed(Content(tables));

    private static byte[] Packed(string content, string manifest = "<manifest/>") =>
        Parts
            .Of(
                Samples.Zip.Of(
                    ("mimetype", "application/vnd.oasis.opendocument.spreadsheet"u8.ToArray()),
                    ("content.xml", Encoding.UTF8.GetBytes(content)),
                    ("META-INF/manifest.xml", Encoding.UTF8.GetBytes(manifest))
                )
            )
            .Pack();
}
