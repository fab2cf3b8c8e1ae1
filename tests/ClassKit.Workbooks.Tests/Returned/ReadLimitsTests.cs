using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Returned.Packages;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Returned;

public sealed class ReadLimitsTests
{
    private static readonly byte[] Plain = HandMade
        .Sheet(
            """
            <row r="1"><c r="A1"><v>1</v></c><c r="B1" t="inlineStr"><is><t>twelve chars</t></is></c></row>
            <row r="2"><c r="A2"><f t="shared" ref="A2:A9" si="0">SUM($A$1:$A$1)</f></c></row>
            <row r="3"><c r="A3"><f t="shared" si="0"/></c></row>
            """,
            names: """<definedName name="a">S!$A$1</definedName><definedName name="b">S!$A$1</definedName>"""
        )
        .ToBytes();

    public static TheoryData<string, ReadLimits, Excess, long> Limits =>
        new()
        {
            {
                "file",
                new() { FileBytes = 100 },
                Excess.FileMegabytes,
                0
            },
            {
                "unpacked",
                new() { UnpackedBytes = 500 },
                Excess.UnpackedMegabytes,
                0
            },
            {
                "entries",
                new() { Entries = 4 },
                Excess.Parts,
                4
            },
            {
                "names of entries",
                new() { DirectoryBytes = 50 },
                Excess.Parts,
                4_000
            },
            {
                "one element",
                new() { ElementBytes = 8 },
                Excess.ElementMegabytes,
                0
            },
            {
                "pointers",
                new() { Relationships = 1 },
                Excess.Relations,
                1
            },
            {
                "all texts",
                new() { AllTextLength = 11 },
                Excess.AllTextCharacters,
                11
            },
            {
                "shared formulas",
                new() { SharedFormulas = 0 },
                Excess.SharedFormulas,
                0
            },
            {
                "sheets",
                new() { Sheets = 0 },
                Excess.Sheets,
                0
            },
            {
                "cells",
                new() { Cells = 3 },
                Excess.Cells,
                3
            },
            {
                "names",
                new() { Names = 1 },
                Excess.Names,
                1
            },
            {
                "formulas, shared ones counted again",
                new() { AllFormulasLength = 20 },
                Excess.AllFormulaCharacters,
                20
            },
        };

    [Theory]
    [MemberData(nameof(Limits))]
    public void A_workbook_beyond_a_limit_is_refused_with_that_limit_named(string limit, ReadLimits limits, Excess what, long most)
    {
        Assert.NotEmpty(limit);
        Assert.Null(ReturnedWorkbookReader.Read(Plain).Refusal);

        var refusal = ReturnedWorkbookReader.Read(Plain, limits).Refusal!;
        Assert.Equal((what, most), (Assert.IsType<Refusal.TooLarge>(refusal).What, ((Refusal.TooLarge)refusal).Most));
    }

    [Fact]
    public void A_text_or_formula_beyond_a_limit_is_cut_and_costs_only_its_own_cell()
    {
        var read = ReturnedWorkbookReader.Read(Plain, new() { TextLength = 11, FormulaLength = 13 }).Workbook!;

        Assert.Equal("twelve char… (too long)", read.Find(new("S", 1, 2))!.Stored.Text);
        Assert.Equal(1, read.Find(new("S", 1, 1))!.Stored.Number);
        Assert.Equal(EvaluationStatus.Unsupported, new WorkbookEvaluator(read).Evaluate(new("S", 2, 1)).Status);
        Assert.Equal("S!$A$… (too long)", ReturnedWorkbookReader.Read(Plain, new() { FormulaLength = 5 }).Workbook!.Names[0].Formula);
    }

    [Fact]
    public void What_we_make_ourselves_is_read_without_any_limit()
    {
        foreach (
            var limit in typeof(ReadLimits)
                .GetProperties()
                .Where(limit => limit.PropertyType.IsValueType && limit.Name != nameof(ReadLimits.RatioFromBytes))
        )
            Assert.Equal(limit.PropertyType == typeof(int) ? int.MaxValue : (object)long.MaxValue, limit.GetValue(ReadLimits.Own));
    }

    [Fact]
    public void A_bomb_is_refused_long_before_it_is_unpacked()
    {
        // 8 MB of little but spaces pack into some 8 KB.
        var bomb = HandMade.Sheet(string.Concat(Enumerable.Repeat("<a/>" + new string(' ', 500_000), 16))).ToBytes();
        Assert.True(bomb.Length < 20_000);

        var refusal = ReturnedWorkbookReader.Read(bomb).Refusal!;
        var large = Assert.IsType<Refusal.TooLarge>(refusal);
        Assert.Equal((Excess.PackingRatio, 400), (large.What, large.Most));
    }

    [Theory]
    [InlineData("<a>", 200, Excess.Depth)]
    [InlineData("<a{0}/>", 20_000, Excess.XmlNames)]
    [InlineData("<a a{0}=\"\"/>", 20_000, Excess.XmlNames)]
    public void Xml_that_a_reader_would_have_to_remember_is_refused(string element, int times, Excess what)
    {
        var sheet = HandMade.Sheet(
            string.Concat(
                Enumerable
                    .Range(0, times)
                    .Select(at =>
                        element.Replace("{0}", at.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal)
                    )
            )
        );

        Assert.Equal(what, Assert.IsType<Refusal.TooLarge>(ReturnedWorkbookReader.Read(sheet.ToBytes()).Refusal).What);
    }

    [Fact]
    public void A_text_in_many_pieces_is_bounded_as_one()
    {
        var pieces = string.Concat(Enumerable.Repeat("<r><t>some words</t></r>", 200_000));

        Assert.Equal(
            Excess.TextCharacters,
            Assert.IsType<Refusal.TooLarge>(HandMade.Sheet("", strings: $"<si>{pieces}</si>").Refused()).What
        );
        Assert.Equal(
            Excess.TextCharacters,
            Assert
                .IsType<Refusal.TooLarge>(
                    HandMade.Sheet("", strings: $"<si><t><![CDATA[{new string('<', 2_000_000)}]]></t></si>").Refused()
                )
                .What
        );
    }

    [Fact]
    public void Parts_that_are_not_read_may_be_as_large_as_they_like()
    {
        var workbook = HandMade
            .Sheet("""<row r="1"><c r="A1"><v>1</v></c></row>""")
            .With("xl/media/image1.png", new string(' ', 3_000_000));

        Assert.Null(ReturnedWorkbookReader.Read(workbook.ToBytes(), new ReadLimits { UnpackedBytes = 10_000 }).Refusal);
    }

    [Fact]
    public void A_stream_is_read_no_further_than_the_limit()
    {
        using var endless = new EndlessStream();

        Assert.IsType<Refusal.TooLarge>(ReturnedWorkbookReader.Read(endless, new ReadLimits { FileBytes = 1_000_000 }).Refusal);
        Assert.True(endless.Given < 2_000_000);
    }

    private sealed class EndlessStream : MemoryStream
    {
        public long Given { get; private set; }

        public override int Read(Span<byte> buffer)
        {
            Given += buffer.Length;
            return buffer.Length;
        }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));
    }
}
