namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>Formulas that are long, deep, many, circular, or that make much of little; most stand where an answer is asked.</summary>
internal static class FormulaStorms
{
    public static IEnumerable<HostileFile> Files =>
        [
            .. Answers.Select((formula, at) => new HostileFile($"answers that storm {at}", () => Sheets.Answered(formula, Few))),
            .. Products.Select(
                (formula, at) => new HostileFile($"as many as there are of as many {at}", () => Sheets.Answered(formula, Few))
            ),
            .. Costliest.Select(
                (formula, at) =>
                    new HostileFile($"the costliest, six times {at}", () =>
                        Sheets.Answered(
                            "A1000",
                            string.Concat(
                                Enumerable
                                    .Range(0, 6)
                                    .Select(again =>
                                        $"<row r=\"{2000 + again}\"><c r=\"A{2000 + again}\"><f>{System.Security.SecurityElement.Escape(formula)}+{again}</f></c></row>"
                                    )
                            )
                        )
                    )
            ),
            new("every cell looked up among all", () => Sheets.Answered("SUM(C1000:D20999)", Sheets.Rows(20_000, 4, (row, column) => column
                        < 3
                            ? $"><v>{row * 7919 % 99_991}</v>"
                        : column == 3 ? $"><f>MATCH(A{row},B$1000:B$20999,0)</f>"
                        : $"><f>COUNTIF(B$1000:B$20999,A{row}&amp;\"*\")</f>"))),
            new("a text that doubles from cell to cell", () =>
                Sheets.Answered(
                    "LEN(A1999)",
                    Sheets.Rows(1_000, 3, (row, column) =>
                        row == 1000 ? " t=\"str\"><v>ab</v>" : $"><f>LEFT(A{row - 1}&amp;B{row - 1}&amp;C{row - 1},32767)</f>"
                    )
                )
            ),
            new("a chain of a hundred thousand cells", () =>
                Sheets.Answered("A100999", Sheets.Rows(100_000, 1, (row, _) => row == 1000 ? "><v>1</v>" : $"><f>A{row - 1}+1</f>"))
            ),
            new("a circle of a hundred thousand cells", () =>
                Sheets.Answered("A100999", Sheets.Rows(100_000, 1, (row, _) => $"><f>A{(row == 1000 ? 100_999 : row - 1)}+1</f>"))
            ),
            new("a tree that doubles at every cell", () =>
                Sheets.Answered("A1999", Sheets.Rows(1_000, 1, (row, _) => row == 1000 ? "><v>1</v>" : $"><f>A{row - 1}+A{row - 1}</f>"))
            ),
            new("cells that all need all others", () =>
                Sheets.Answered("SUM(A1000:J1099)", Sheets.Rows(100, 10, (_, _) => "><f>SUM(A1000:J1099)</f>"))
            ),
            new("sums of growing columns", () =>
                Sheets.Answered(
                    "SUM(B1000:B20999)",
                    Sheets.Rows(20_000, 2, (row, column) => column == 1 ? "><v>1</v>" : $"><f>SUM(A$1000:A{row})</f>")
                )
            ),
            new("a quarter of a million formulas", () =>
                Sheets.Answered("SUM(A1000:J25999)", Sheets.Rows(24_000, 10, (_, _) => "><f>1+1</f>"))
            ),
            new("a quarter of a million formulas, written once", () =>
                Sheets.Answered(
                    "SUM(A1000:J25999)",
                    "<row r=\"999\"><c r=\"A999\"><f t=\"shared\" si=\"7\" ref=\"A999:J25999\">SUM($A$1:B2)+A1*2</f></c></row>"
                        + Sheets.Rows(24_000, 10, (_, _) => "><f t=\"shared\" si=\"7\"/>")
                )
            ),
            new("formulas as text, a quarter of a million", () =>
                Sheets.WithRows(Sheets.Rows(24_000, 10, (row, column) => $" t=\"str\"><v>=SUM(A{row},B{column})*2+3</v>"))
            ),
            new("formulas as text, long ones", () =>
                Sheets.WithRows(
                    Sheets.Rows(400, 5, (row, column) =>
                        $" t=\"str\"><v>={string.Join('+', Enumerable.Repeat($"A{row + column}", 5_000))}</v>"
                    )
                )
            ),
            new("one formula as text, in every cell", () =>
                Text("=" + string.Join('+', Enumerable.Repeat("A1", 10_000)), Sheets.Rows(2_400, 100, (_, _) => " t=\"s\"><v>0</v>"))
            ),
            new("names that stand for each other", () => Named(("na", "nb+1"), ("nb", "na+1")).Pack()),
            new("names that double", () =>
                Named([.. Enumerable.Range(1, 60).Select(at => ($"na_{at}", at == 60 ? "1" : $"na_{at + 1}+na_{at + 1}"))]).Pack()
            ),
            new("a name of ten thousand names", () =>
                Named([
                        ("na", string.Join('+', Enumerable.Range(1, 700).Select(at => $"nb_{at}"))),
                        .. Enumerable.Range(1, 700).Select(at => ($"nb_{at}", string.Join('+', Enumerable.Repeat("nc", 1000)))),
                        ("nc", "SUM(A1:J100)"),
                    ])
                    .Pack()
            ),
            new("circles that are to be walked", () =>
                Sheets
                    .AnsweredParts("A1000", "<row r=\"1000\"><c r=\"A1000\"><f>A1000+1</f></c></row>")
                    .Change(Sheets.Workbook, xml =>
                        xml.Replace(
                            "</workbook>",
                            "<calcPr iterate=\"1\" iterateCount=\"2147483647\" iterateDelta=\"0\"/></workbook>",
                            StringComparison.Ordinal
                        )
                    )
                    .Pack()
            ),
            new("what-if tables", () =>
                Sheets.WithRows(
                    "<row r=\"900\"><c r=\"A900\"><f t=\"dataTable\" ref=\"A900:J999\" dt2D=\"1\" r1=\"A1\" r2=\"A2\"/><v>1</v></c></row>"
                )
            ),
            .. Pages.Select(
                (formula, at) =>
                    new HostileFile($"pages of text in every cell {at}", () =>
                        Text(new string('a', 32_000), Sheets.Rows(2_000, 100, (_, _) => " t=\"s\"><v>0</v>"), formula)
                    )
            ),
            new("a formula that is too long", () => Sheets.Answered(string.Join('+', Enumerable.Repeat("1", 5_000)))),
            new("a table within itself", () => Sheets.Answered("SUM(Table1[[#All],[a]:[zz]])")),
        ];

    private static string Few => Sheets.Rows(100, 10, (row, column) => $"><v>{row * column}</v>");

    private static IReadOnlyList<string> Answers =>
        [
            new string('(', 4_000) + "1" + new string(')', 4_000),
            string.Concat(Enumerable.Repeat("ABS(", 1_500)) + "1" + new string(')', 1_500),
            new string('-', 8_000) + "1",
            "1" + new string('%', 8_000),
            "1" + string.Concat(Enumerable.Repeat("^1", 4_000)),
            string.Concat(Enumerable.Repeat("IF(1,", 1_200)) + "1" + new string(')', 1_200),
            string.Concat(Enumerable.Repeat("LET(x,1,", 900)) + "x" + new string(')', 900),
            "LET(a,SEQUENCE(1000000),b,a+a,c,b+b,d,c+c,e,d+d,f,e+e,SUM(f))",
            "LEN(REPT(REPT(\"x\",32767),32767))",
            string.Join('&', Enumerable.Repeat("REPT(\"x\",32767)", 200)),
            "LEN("
                + string.Concat(Enumerable.Repeat("SUBSTITUTE(", 300))
                + "REPT(\"x\",30000)"
                + string.Concat(Enumerable.Repeat(",\"x\",\"xx\")", 300))
                + ")",
            "SUMPRODUCT(ROW(INDIRECT(\"1:1000000\"))^2)",
            "SUM(SEQUENCE(1000,1000)*SEQUENCE(1,1000))",
            "SUM(MMULT(SEQUENCE(500,500),SEQUENCE(500,500)))",
            "SUM(MINVERSE(SEQUENCE(200,200)^0.5))",
            "SUM(SORT(SEQUENCE(1000000,1,1000000,-1)))",
            "COUNTA(UNIQUE(SEQUENCE(100000)))",
            "FACT(170)^FACT(170)",
            "COMBIN(1E15,5E14)",
            "FIND(\"b\",REPT(\"a\",32767))+SEARCH(\"*a*a*a*a*a*a*b\",REPT(\"a\",32000))",
            "COUNTIF(A1000:J1099,\"*?*?*?*?*?*?*?*?*?*?*?*?*?*?b\")",
            "NOW()+RAND()+RANDBETWEEN(1,1E15)",
            "INDIRECT(\"'\"&REPT(\"a\",30000)&\"'!A1\")",
            "HYPERLINK(\"http://example.org\",1)+WEBSERVICE(\"http://example.org\")",
            "CALL(\"kernel32\",\"WinExec\",\"JCJ\",\"calc.exe\",0)+cmd|' /C calc'!A0",
            "'[http://example.org/book.xlsx]Sheet1'!A1+[1]Sheet1!A1",
            "SUM(A:A)+SUM(B:B)+SUM(1:1048576)",
            "TEXT(1,REPT(\"0\",30000))&TEXT(1E300,\"#,##0.000\")",
            "DATE(9999,99999999,99999999)+EDATE(1,1E9)+NETWORKDAYS(0,1E12)",
            "REDUCE(0,SEQUENCE(1000000),LAMBDA(a,b,a+b))",
            "SUBTOTAL(9,A1000:J1099)+AGGREGATE(14,6,A1000:J1099,1)",
            "PMT(1E-300,1E300,1)+RATE(1E9,-1,1E9)+IRR(A1000:J1099)",
            "1/0+#REF!+#NAME?",
            "SUM((A1000:J1099,A1000:J1099,A1000:J1099) (A1000:J1099,B1000:C1099))",
            string.Join(' ', Enumerable.Repeat("A1:XFD1048576", 500)),
        ];

    /// <summary>Each could do n × m work with n + m values, or much for one number.</summary>
    private static IReadOnlyList<string> Products =>
        [
            "SUM(XLOOKUP(SEQUENCE(30000,1,30000,-1),SEQUENCE(30000),SEQUENCE(30000),0,0,-1))",
            "SUM(XMATCH(SEQUENCE(30000)&\"*\",SEQUENCE(30000)&\"\",2))",
            "SUM(XLOOKUP(SEQUENCE(30000)+0.5,SEQUENCE(30000),SEQUENCE(30000),0,1))",
            "SUMPRODUCT(COUNTIF(A1000:J1099,SEQUENCE(50000)))",
            "SUMPRODUCT(COUNTIFS(A1000:J1099,\"<\"&A1000:J1099,A1000:J1099,A1000:J1099&\"*\"))",
            "SUMPRODUCT(SUMIF(A1000:J1099,SEQUENCE(50000),A1000:J1099))",
            "SUM(NETWORKDAYS(SEQUENCE(1000),2900000,A1000:J1099))",
            "SUM(NETWORKDAYS.INTL(SEQUENCE(1000),2900000,\"1111110\",SEQUENCE(50000)))",
            "SUM(WORKDAY(SEQUENCE(1000),2000000,A1000:J1099))",
            "COLUMNS(TEXTSPLIT(REPT(\"ab,\",10000),UNICHAR(SEQUENCE(5000,1,200))))",
            "SUM(LEN(TEXTBEFORE(REPT(\"ab\",16000),UNICHAR(SEQUENCE(5000,1,200)),SEQUENCE(1000),1,1)))",
            "SUM(LEN(TEXTAFTER(REPT(\"ab\",16000),REPT(\"a\",SEQUENCE(1000)),-SEQUENCE(1000))))",
            "SUM(LARGE(SEQUENCE(50000),SEQUENCE(50000)))",
            "SUM(SMALL(A1000:J1099,SEQUENCE(50000)))",
            "SUM(PERCENTRANK(SEQUENCE(50000),SEQUENCE(50000)))",
            "SUM(QUARTILE(A1000:J1099,MOD(SEQUENCE(50000),5)))",
            "SUM(RANK(SEQUENCE(50000),A1000:J1099))",
            "SUM(FREQUENCY(SEQUENCE(50000),SEQUENCE(50000)))",
            "SUM(COMBIN(SEQUENCE(50000)+20000,10000))",
            "SUM(PERMUT(SEQUENCE(50000)+20000,10000))",
            "SUM(MULTINOMIAL(SEQUENCE(9000)))",
            "SUM(DB(1E6,1,100000,SEQUENCE(90000),1))",
            "SUM(CUMIPMT(0.001,1000000,1,1,SEQUENCE(50000,1,900000),0))",
            "SUM(RATE(SEQUENCE(50000),-1,100))",
            "XIRR(SEQUENCE(50000)-2,SEQUENCE(50000))",
            "SUM(MDETERM(A1000:J1009*SEQUENCE(1,10)))+MDETERM(SEQUENCE(100,100)^0.5)+SUM(MINVERSE(SEQUENCE(100,100)^0.3))",
            "SUM(LEN(SUBSTITUTE(REPT(\"a\",32767),REPT(\"a\",16000)&\"b\",SEQUENCE(1000))))",
            "SUM(IFERROR(SEARCH(REPT(\"*a?\",2000)&\"b\",REPT(\"a\",32767),SEQUENCE(1000)),0))",
            "SUM(IFERROR(FIND(REPT(\"a\",16000)&\"b\",REPT(\"a\",32767),SEQUENCE(1000)),0))",
            "SUM(IFERROR(VALUE(REPT(\"1 \",15)&SEQUENCE(50000)),0))",
            "SUM(IFERROR(DATEVALUE(\"1 January 1 1 1 1 1 1 1 1 \"&SEQUENCE(50000)),0))",
            "SUM(LEN(TEXT(SEQUENCE(50000),\"dddd d mmmm yyyy [h]:mm:ss.000\")))",
            "SUM(LEN(TEXT(SEQUENCE(1000)/7,REPT(\"# \",1000)&\"?/\"&REPT(\"?\",10))))",
            "ROWS(UNIQUE(MOD(SEQUENCE(50000),7)&REPT(\"x\",200)))",
            "SUM(SORTBY(SEQUENCE(50000),MOD(SEQUENCE(50000)*7919,99991),1,SEQUENCE(50000),-1))",
            "SUM(INDIRECT(\"A\"&SEQUENCE(50000)))",
            "SUM(DSUM(A1000:J1099,SEQUENCE(50000,1,1,0),A1000:J1099))",
            "LEN(TEXTJOIN(REPT(\",\",100),FALSE,SEQUENCE(50000)&\"\"))",
            "SUM(ISFORMULA(A1000:J1099)*1)+SUM(LEN(ROMAN(MOD(SEQUENCE(50000),3999))))+SUM(LEN(BASE(SEQUENCE(50000)*1E9,2,255)))",
            "SUM(GCD(SEQUENCE(50000)))+SUM(CONVERT(SEQUENCE(50000),\"lbm\",\"g\"))+SUM(YEARFRAC(1,SEQUENCE(50000),1))",
        ];

    /// <summary>What took the longest of all for the steps that it pays; as many of them as all cells together may take.</summary>
    private static IEnumerable<string> Costliest => [Products[0], "SUM(SORT(SEQUENCE(1000000,1,1000000,-1)))"];

    private static Parts Named(params IReadOnlyList<(string Name, string Formula)> names) =>
        Sheets
            .AnsweredParts(names[0].Name, Few)
            .Replace(
                Sheets.Workbook,
                "</definedNames>",
                string.Concat(names.Select(name => $"<definedName name=\"{name.Name}\">{name.Formula}</definedName>")) + "</definedNames>"
            );

    private static IReadOnlyList<string> Pages =>
        [
            "COUNTIF(A1000:CV2999,\"*a*a*a*a*a*a*b\")",
            "COUNTIF(A1000:CV2999,A1000)",
            "ROWS(SORT(A1000:A2999))+ROWS(UNIQUE(A1000:A2999))",
            "MATCH(A1000&\"b\",A1000:A2999,0)",
            "SUMPRODUCT((A1000:CV2999=A1000:CV2999)*1)",
            "LEN(SUBSTITUTE(A1000,\"a\",\"b\"))+SUM(LEN(SUBSTITUTE(A1000:A2999,REPT(\"a\",100),\"b\")))",
            "SUM(SEARCH(\"*a*b\",A1000:A2999))",
        ];

    private static byte[] Text(string text, string rows, string formula = "A1000") =>
        Sheets
            .AnsweredParts(formula, rows)
            .With(
                "xl/sharedStrings.xml",
                $"<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><si><t>{text}</t></si></sst>"
            )
            .Pack();
}
