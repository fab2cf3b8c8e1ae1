namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>Sheets that claim to be as large as sheets can be.</summary>
internal static class Dimensions
{
    private const string Corner = "<row r=\"1048576\"><c r=\"XFD1048576\"><v>1</v></c></row>";

    public static IEnumerable<HostileFile> Files =>
        [
            new("a cell in the last corner", () => Sheets.WithRows(Corner)),
            new("a cell beyond the last corner", () => Sheets.WithRows("<row r=\"1048577\"><c r=\"XFE1048577\"><v>1</v></c></row>"), true),
            new("a row without a number behind the last", () => Sheets.WithRows(Corner + "<row><c><v>1</v></c></row>"), true),
            new("a claim of a whole sheet", () =>
                Sheets
                    .Parts.Change(Sheets.Sheet, xml =>
                        System.Text.RegularExpressions.Regex.Replace(xml, "<dimension ref=\"[^\"]*\"", "<dimension ref=\"A1:XFD1048576\"")
                    )
                    .Pack()
            ),
            new("a sheet merged whole, a thousand times", () =>
                Sheets.Behind(
                    "<mergeCells>" + string.Concat(Enumerable.Repeat("<mergeCell ref=\"A1:XFD1048576\"/>", 1_000)) + "</mergeCells>"
                )
            ),
            new("an array formula over a whole sheet", () =>
                Sheets.WithRows(
                    "<row r=\"900\"><c r=\"A900\"><f t=\"array\" ref=\"A1:XFD1048576\">ROW(A1:XFD1048576)</f><v>1</v></c></row>"
                )
            ),
            new("a thousand array formulas over whole columns", () =>
                Sheets.WithRows(Sheets.Rows(1_000, 1, (row, _) => $"><f t=\"array\" ref=\"A1:XFD1048576\">ROW(A{row})</f><v>1</v>"))
            ),
            new("a shared formula from corner to corner", () =>
                Sheets.WithRows(
                    "<row r=\"900\"><c r=\"A900\"><f t=\"shared\" si=\"9\" ref=\"A1:XFD1048576\">XFD1048576+A1</f></c></row><row r=\"1048576\"><c r=\"XFD1048576\"><f t=\"shared\" si=\"9\"/></c></row>"
                )
            ),
            new("sums over whole sheets", () => Sheets.Answered("SUM(A1:XFD1048576)+SUMPRODUCT((A1:XFD1048576>0)*1)", Corner)),
            new("a lookup down whole columns", () => Sheets.Answered("SUMPRODUCT((A:A=A:A)*(B:B=B:B)*(C:C<>D:D))", Corner)),
            new("a matrix of whole columns", () => Sheets.Answered("SUM(MMULT(TRANSPOSE(A1:A1048576),A1:A1048576))", Corner)),
            new("a million by a million", () => Sheets.Answered("SUM(SEQUENCE(1048576,16384))")),
            new("an offset over everything", () => Sheets.Answered("SUM(OFFSET(A1,0,0,1048576,16384))", Corner)),
            new("counting everything a thousand times", () =>
                Sheets.Answered(string.Join('+', Enumerable.Repeat("COUNTIF(A:XFD,1)", 400)), Corner)
            ),
            new("numbers beyond numbers", () =>
                Sheets.WithRows(
                    "<row r=\"900\"><c r=\"A900\"><v>1E400</v></c><c r=\"B900\"><v>-1E999999999</v></c><c r=\"C900\"><v>NaN</v></c></row>"
                )
            ),
            new("a number of a million digits", () =>
                Sheets.WithRows($"<row r=\"900\"><c r=\"A900\"><v>{new string('9', 900_000)}</v></c></row>")
            ),
            new("a date far away", () => Sheets.WithRows("<row r=\"900\"><c r=\"A900\" t=\"d\"><v>99999-01-01</v></c></row>"), true),
            new(
                "a text number that is not there",
                () => Sheets.WithRows("<row r=\"900\"><c r=\"A900\" t=\"s\"><v>2147483648</v></c></row>"),
                true
            ),
            new("a text number below zero", () => Sheets.WithRows("<row r=\"900\"><c r=\"A900\" t=\"s\"><v>-1</v></c></row>"), true),
        ];
}
