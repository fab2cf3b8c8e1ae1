using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Returned;

public sealed class DamagedFilesTests
{
    private static readonly byte[] Whole = DealtWorkbookWriter.Write(SampleClass.Dealt, SampleClass.Dealt.Students[0]);

    [Fact]
    public void A_workbook_cut_off_anywhere_is_refused_as_cut_off()
    {
        Assert.Null(ReturnedWorkbookReader.Read(Whole).Refusal);
        for (var length = 4; length < Whole.Length; length += 97)
            Assert.Equal((length, new Refusal.CutOff()), (length, ReturnedWorkbookReader.Read(Whole[..length]).Refusal));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_workbook_with_bytes_changed_is_read_whole_or_refused_and_never_throws(int seed)
    {
        var random = new Random(seed);
        var whole = Describe(ReturnedWorkbookReader.Read(Whole));
        var refused = 0;
        for (var round = 0; round < 1_000; round++)
        {
            var file = (byte[])Whole.Clone();
            for (var change = random.Next(1, 5); change > 0; change--)
                file[random.Next(file.Length)] = (byte)random.Next(256);

            var reading = ReturnedWorkbookReader.Read(file);
            if (reading.Refusal is not null)
                refused++;
            else
                Assert.Equal(whole, Describe(reading));
        }

        Assert.InRange(refused, 1, 999);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(6)]
    public void Bytes_cut_out_or_doubled_never_make_the_reader_throw(int seed)
    {
        var random = new Random(seed);
        for (var round = 0; round < 500; round++)
        {
            var (from, to) = (random.Next(Whole.Length), random.Next(Whole.Length));
            byte[] file = [.. Whole.AsSpan(0, from), .. Whole.AsSpan(to)];

            var reading = ReturnedWorkbookReader.Read(file);
            Assert.True(reading.Workbook is null ^ reading.Refusal is null);
        }
    }

    [Fact]
    public void Noise_behind_the_signature_of_a_zip_archive_is_refused()
    {
        var random = new Random(7);
        for (var round = 0; round < 300; round++)
        {
            var noise = new byte[random.Next(4, 4_000)];
            random.NextBytes(noise);
            "PK\u0003\u0004"u8.CopyTo(noise);

            Assert.NotNull(ReturnedWorkbookReader.Read(noise).Refusal);
        }
    }

    /// <summary>
    /// All cells and names. What is read although bytes changed must be all there: the change was in a part that is not read.
    /// </summary>
    private static string Describe(WorkbookReading reading) =>
        string.Join(
            '\n',
            reading
                .Workbook!.Sheets.SelectMany(sheet =>
                    sheet.Cells.OrderBy(cell => cell.Key).Select(cell => $"{sheet.Name} {cell.Key} {cell.Value}")
                )
                .Concat(reading.Workbook.Names.Select(name => name.ToString()))
        );
}
