using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Returned.SpreadsheetMl;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Returned;

/// <summary>Sheets, names and where parts lie: ECMA-376 Part 1, 18.2; Part 2, 9.3 (relationships); Part 4 (transitional).</summary>
public sealed class WorkbookReadingTests
{
    private const string OneCell = """<row r="1"><c r="A1"><v>5</v></c></row>""";

    [Fact]
    public void Names_are_read_with_the_sheet_they_belong_to()
    {
        var workbook = HandMade
            .Sheet(
                OneCell,
                names: """
                <definedName name="mix_flour">S!$A$1</definedName>
                <definedName name="mix_water" localSheetId="0">S!$A$2</definedName>
                <definedName name="mix_salt">S!#REF!</definedName>
                <definedName name="mix_lost" localSheetId="9">S!$A$3</definedName>
                <definedName name="_xlnm.Print_Area" localSheetId="0">S!$A$1:$B$9</definedName>
                <definedName name="mix_quoted" hidden="1">'It&apos;s &quot;S&quot;'!$A$1</definedName>
                """
            )
            .Read();

        Assert.Equal(
            [
                new DefinedName("mix_flour", null, "S!$A$1"),
                new DefinedName("mix_water", "S", "S!$A$2"),
                new DefinedName("mix_salt", null, "S!#REF!"),
                new DefinedName("mix_quoted", null, "'It's \"S\"'!$A$1"),
            ],
            workbook.Names
        );
    }

    [Fact]
    public void Hidden_sheets_are_read_and_chart_sheets_are_not()
    {
        var workbook = HandMade
            .Sheet(OneCell)
            .Replace(
                "xl/workbook.xml",
                "<sheets>",
                """<sheets><sheet name="Chart" sheetId="3" r:id="rId3"/><sheet name="Aside" sheetId="2" state="veryHidden" r:id="rId4"/>"""
            )
            .Replace(
                "xl/workbook.xml",
                "<definedNames>",
                """<definedNames><definedName name="here" localSheetId="2">S!$A$1</definedName>"""
            )
            .With(
                "xl/_rels/workbook.xml.rels",
                HandMade.Relationships(
                    ("rId1", "worksheet", "worksheets/sheet1.xml"),
                    ("rId3", "chartsheet", "worksheets/sheet1.xml"),
                    ("rId4", "worksheet", "worksheets/sheet1.xml")
                )
            )
            .Read();

        Assert.Equal(["Aside", "S"], workbook.Sheets.Select(sheet => sheet.Name));
        Assert.Equal("S", Assert.Single(workbook.Names).Sheet);
    }

    [Theory]
    [InlineData("""<workbookPr date1904="1"/>""", true, 35064.0)]
    [InlineData("""<workbookPr date1904="true"/>""", true, 35064.0)]
    [InlineData("""<workbookPr/>""", false, 36526.0)]
    public void The_calendar_of_the_workbook_is_kept(string properties, bool uses1904, double newYear2000)
    {
        var workbook = HandMade.Sheet("""<row r="1"><c r="A1" t="d"><v>2000-01-01</v></c></row>""", workbookProperties: properties).Read();

        Assert.Equal(uses1904 ? DateSystem.From1904 : DateSystem.From1900, workbook.Dates);
        Assert.Equal(newYear2000, workbook.Sheets[0].Cells[(1, 1)].Stored.Number);
    }

    [Fact]
    public void The_strict_form_of_the_format_is_read_alike()
    {
        var strict = HandMade
            .Sheet(OneCell, names: """<definedName name="n">S!$A$1</definedName>""")
            .ReplaceEverywhere("http://schemas.openxmlformats.org/spreadsheetml/2006/main", "http://purl.oclc.org/ooxml/spreadsheetml/main")
            .ReplaceEverywhere(
                "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
                "http://purl.oclc.org/ooxml/officeDocument/relationships"
            );

        Assert.Equal(5, strict.Cell("A1")!.Stored.Number);
        Assert.Single(strict.Read().Names);
    }

    [Theory]
    [InlineData("/xl/worksheets/sheet1.xml")]
    [InlineData("worksheets/sheet1.xml")]
    [InlineData("./worksheets/../worksheets/sheet1.xml")]
    [InlineData("../xl/worksheets/sheet1.xml")]
    [InlineData("worksheets/sheet%31.xml")]
    [InlineData("Worksheets/Sheet1.xml")]
    public void A_sheet_is_found_however_its_target_is_written(string target)
    {
        var workbook = HandMade.Sheet(OneCell).Replace("xl/_rels/workbook.xml.rels", "worksheets/sheet1.xml", target);

        Assert.Equal(5, workbook.Cell("A1")!.Stored.Number);
    }

    [Fact]
    public void The_workbook_may_lie_anywhere_in_the_package()
    {
        var moved = HandMade
            .Sheet(OneCell)
            .With("_rels/.rels", HandMade.Relationships(("x", "officeDocument", "/book.xml")))
            .With(
                "book.xml",
                """
                <b:workbook xmlns:b="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">
                <b:sheets><b:sheet name="S" sheetId="1" r:id="a"/></b:sheets></b:workbook>
                """
            )
            .With("_rels/book.xml.rels", HandMade.Relationships(("a", "worksheet", "xl/worksheets/sheet1.xml")))
            .Without("xl/workbook.xml")
            .Without("xl/_rels/workbook.xml.rels")
            .Without("xl/sharedStrings.xml");

        Assert.Equal(5, moved.Cell("A1")!.Stored.Number);
    }

    [Fact]
    public void A_link_out_of_the_package_is_not_followed()
    {
        var linked = HandMade
            .Sheet(OneCell)
            .Replace(
                "xl/_rels/workbook.xml.rels",
                "Target=\"worksheets/sheet1.xml\"",
                "Target=\"http://example.org/sheet.xml\" TargetMode=\"External\""
            );

        Assert.IsType<Refusal.Damaged>(ReturnedWorkbookReader.Read(linked.ToBytes()).Refusal);
    }

    [Fact]
    public void A_listed_sheet_without_its_part_is_damage()
    {
        var refusal = ReturnedWorkbookReader.Read(HandMade.Sheet(OneCell).Without("xl/worksheets/sheet1.xml").ToBytes()).Refusal!;

        Assert.Equal(new Refusal.Damaged(new Damage.MissingSheet(new("S"), "xl/worksheets/sheet1.xml")), refusal);
    }

    [Fact]
    public void A_sheet_listed_with_an_empty_pointer_is_an_old_macro_sheet_without_cells()
    {
        var workbook = HandMade
            .Sheet(OneCell)
            .Replace("xl/workbook.xml", "<sheets>", """<sheets><sheet name="Module" sheetId="2" r:id=""/>""")
            .Read();

        Assert.Equal("S", Assert.Single(workbook.Sheets).Name);
    }

    [Fact]
    public void Macros_are_noticed_and_never_opened()
    {
        var relationships = HandMade.Relationships(
            ("rId1", "worksheet", "worksheets/sheet1.xml"),
            ("rId9", "vbaProject", "vbaProject.bin")
        );

        Assert.False(HandMade.Sheet(OneCell).Read().HasMacros);
        Assert.True(HandMade.Sheet(OneCell).With("xl/_rels/workbook.xml.rels", relationships).Read().HasMacros);
    }

    [Theory]
    [InlineData("""<calcPr calcId="191029" iterate="1"/>""", true)]
    [InlineData("""<calcPr calcId="191029"/>""", false)]
    public void It_is_kept_whether_circles_are_gone_round(string properties, bool iterates)
    {
        Assert.Equal(
            iterates,
            HandMade.Sheet(OneCell).Replace("xl/workbook.xml", "</workbook>", properties + "</workbook>").Read().IteratesCircles
        );
    }

    [Fact]
    public void A_document_type_is_refused_in_words()
    {
        const string bomb =
            """<!DOCTYPE s [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>&b;</t></si></sst>""";
        var refusal = ReturnedWorkbookReader.Read(HandMade.Sheet(OneCell).With("xl/sharedStrings.xml", bomb).ToBytes()).Refusal!;

        Assert.Equal(new Refusal.Damaged(new Damage.NoXml("xl/sharedStrings.xml")), refusal);
    }

    [Fact]
    public void Tables_are_read_with_their_columns_and_their_filter()
    {
        var workbook = HandMade
            .Sheet("""<row r="2"><c r="B2" t="inlineStr"><is><t>Flour</t></is></c></row><row r="3"><c r="B3"><v>500</v></c></row>""")
            .With(
                "xl/worksheets/_rels/sheet1.xml.rels",
                HandMade.Relationships(("rId1", "table", "../tables/table1.xml"), ("rId2", "table", "../tables/table2.xml"))
            )
            .With(
                "xl/tables/table1.xml",
                """
                <table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="T1" displayName="Doughs" ref="B2:C5" totalsRowCount="1">
                <autoFilter ref="B2:C4"><filterColumn colId="0"/></autoFilter>
                <tableColumns count="2"><tableColumn id="1" name="Flour"/><tableColumn id="2" name="Water_x000a_g"/></tableColumns></table>
                """
            )
            .With(
                "xl/tables/table2.xml",
                """<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" displayName="Lost" ref="nowhere"><tableColumns><tableColumn name="x"/></tableColumns></table>"""
            )
            .Read();

        var table = Assert.Single(workbook.Tables);
        Assert.Equal(
            ("Doughs", "S", 2, 2, 5, true, true),
            (table.Name, table.Sheet, table.Top, table.Left, table.Bottom, table.HasHeaders, table.HasTotals)
        );
        Assert.Equal(["Flour", "Water\ng"], table.Columns);
        Assert.Equal((3, 5), workbook.Sheets[0].FilteredRows);
    }

    [Fact]
    public void A_workbook_says_when_and_by_whom_it_was_saved()
    {
        // The sample of ECMA-376 Part 2 (OPC), 11.1, with the time zone of a program east of Greenwich.
        var workbook = WithProperties(
            """
            <coreProperties xmlns="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
              <dc:creator>Alan Example</dc:creator>
              <dcterms:created xsi:type="dcterms:W3CDTF">2005-06-12T10:00:00Z</dcterms:created>
              <lastModifiedBy>Ada Example</lastModifiedBy>
              <dcterms:modified xsi:type="dcterms:W3CDTF">2005-11-23T02:00:00+02:00</dcterms:modified>
            </coreProperties>
            """
        );

        Assert.Equal(
            new("Alan Example", "Ada Example", new DateTime(2005, 6, 12, 10, 0, 0), new DateTime(2005, 11, 23, 0, 0, 0)),
            ReturnedWorkbookReader.Read(workbook).Properties
        );
    }

    /// <summary>A time without a zone stays one, and so does LibreOffice's in SpreadsheetML, which is local time with a Z (from memory).</summary>
    [Theory]
    [InlineData("2005-11-23T02:00:00", "", DateTimeKind.Unspecified)]
    [InlineData("2005-11-23T02:00:00Z", "", DateTimeKind.Utc)]
    [InlineData("2005-11-23T02:00:00Z", "Microsoft Excel", DateTimeKind.Utc)]
    [InlineData("2005-11-23T02:00:00Z", "LibreOffice/24.2.7.2$Linux_X86_64 LibreOffice_project/420", DateTimeKind.Unspecified)]
    public void A_time_says_which_clock_it_is_of_or_is_known_not_to(string written, string program, DateTimeKind kind)
    {
        var workbook = HandMade
            .Sheet("""<row r="1"><c r="A1"><v>5</v></c></row>""")
            .With(
                "_rels/.rels",
                HandMade.Relationships(
                    ("rId1", "officeDocument", "xl/workbook.xml"),
                    ("rId2", "metadata/core-properties", "docProps/core.xml"),
                    ("rId3", "extended-properties", "docProps/app.xml")
                )
            )
            .With("docProps/app.xml", $"<Properties><Application>{program}</Application></Properties>")
            .With("docProps/core.xml", $"<coreProperties><modified>{written}</modified></coreProperties>")
            .ToBytes();

        var time = ReturnedWorkbookReader.Read(workbook).Properties.Modified!.Value;

        Assert.Equal((new DateTime(2005, 11, 23, 2, 0, 0), kind), (time, time.Kind));
    }

    [Theory]
    [InlineData("<coreProperties")]
    [InlineData("")]
    [InlineData("<!DOCTYPE a><a/>")]
    [InlineData("<a><modified>yesterday</modified><creator/></a>")]
    public void No_work_is_lost_over_broken_document_properties(string part)
    {
        var reading = ReturnedWorkbookReader.Read(WithProperties(part));

        Assert.NotNull(reading.Workbook);
        Assert.Equal(DocumentProperties.None, reading.Properties);
    }

    private static byte[] WithProperties(string part) =>
        HandMade
            .Sheet("""<row r="1"><c r="A1"><v>5</v></c></row>""")
            .With(
                "_rels/.rels",
                HandMade.Relationships(
                    ("rId1", "officeDocument", "xl/workbook.xml"),
                    ("rId2", "metadata/core-properties", "docProps/core.xml")
                )
            )
            .With("docProps/core.xml", part)
            .ToBytes();
}
