using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Returned;

public sealed class ReadLimitsTests
{
    private static readonly byte[] Plain = HandMade.Sheet("""
        <row r="1"><c r="A1"><v>1</v></c><c r="B1" t="inlineStr"><is><t>twelve chars</t></is></c></row>
        <row r="2"><c r="A2"><f t="shared" ref="A2:A9" si="0">SUM($A$1:$A$1)</f></c></row>
        <row r="3"><c r="A3"><f t="shared" si="0"/></c></row>
        """, names: """<definedName name="a">S!$A$1</definedName><definedName name="b">S!$A$1</definedName>""").ToBytes();

    public static TheoryData<string, ReadLimits, string> Limits => new()
    {
        { "file", new() { FileBytes = 100 }, "the file is larger" },
        { "unpacked", new() { UnpackedBytes = 500 }, "unpacked" },
        { "entries", new() { Entries = 4 }, "5 parts" },
        { "sheets", new() { Sheets = 0 }, "sheets" },
        { "cells", new() { Cells = 3 }, "3 filled cells" },
        { "names", new() { Names = 1 }, "1 defined names" },
        { "text", new() { TextLength = 11 }, "11 characters" },
        { "formula", new() { FormulaLength = 13 }, "13 characters" },
        { "name's formula", new() { FormulaLength = 5 }, "5 characters" },
        { "formulas, shared ones counted again", new() { AllFormulasLength = 20 }, "20 characters together" },
    };

    [Theory]
    [MemberData(nameof(Limits))]
    public void A_workbook_beyond_a_limit_is_refused_with_that_limit_named(string limit, ReadLimits limits, string words)
    {
        Assert.NotEmpty(limit);
        Assert.Null(ReturnedWorkbookReader.Read(Plain).Refusal);

        var refusal = ReturnedWorkbookReader.Read(Plain, limits).Refusal!;
        Assert.Equal(RefusalKind.TooLarge, refusal.Kind);
        Assert.Contains(words, refusal.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bomb_is_refused_long_before_it_is_unpacked()
    {
        // 8 MB of spaces pack into some 8 KB.
        var bomb = HandMade.Sheet(new string(' ', 8_000_000)).ToBytes();
        Assert.True(bomb.Length < 20_000);

        var refusal = ReturnedWorkbookReader.Read(bomb).Refusal!;
        Assert.Equal(RefusalKind.TooLarge, refusal.Kind);
        Assert.Contains("400 times", refusal.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_that_are_not_read_may_be_as_large_as_they_like()
    {
        var workbook = HandMade.Sheet("""<row r="1"><c r="A1"><v>1</v></c></row>""").With("xl/media/image1.png", new string(' ', 3_000_000));

        Assert.Null(ReturnedWorkbookReader.Read(workbook.ToBytes(), new ReadLimits { UnpackedBytes = 10_000 }).Refusal);
    }

    [Fact]
    public void A_stream_is_read_no_further_than_the_limit()
    {
        using var endless = new EndlessStream();

        Assert.Equal(RefusalKind.TooLarge, ReturnedWorkbookReader.Read(endless, new ReadLimits { FileBytes = 1_000_000 }).Refusal!.Kind);
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
