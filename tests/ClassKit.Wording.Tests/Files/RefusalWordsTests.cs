using ClassKit.CellFormulas.Sheets;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Wording.Files;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Files;

public sealed class RefusalWordsTests
{
    public static TheoryData<Refusal, string> Said =>
        new()
        {
            {
                new Refusal.OtherKind(FileKind.Jpeg) { Ending = ".xlsx" },
                "The file is a picture (JPEG), not a workbook. It shows numbers but none of the formulas behind them. Please hand in the workbook itself: in the program or app that you worked in, save or share a copy as Excel workbook (.xlsx). (Its name ends in .xlsx, but a new name does not convert a file.)"
            },
            {
                new Refusal.OtherKind(FileKind.OldWorkbook),
                "The file is an old Excel workbook (.xls, as before 2007), not an Excel workbook (.xlsx). Open your workbook in a spreadsheet program, save it as Excel workbook (.xlsx), and hand that file in."
            },
            {
                new Refusal.OtherKind(FileKind.ArchiveWithWorkbook) { Inside = new("work/ada.xlsx") },
                "The file is a zip archive with 'work/ada.xlsx' in it, not a workbook. Please unpack it and hand in the workbook (.xlsx) that is inside."
            },
            {
                new Refusal.Damaged(new Damage.NoNumber(new("Dough"), "C7", new("1,5"), IsDate: false)),
                "The workbook is damaged: 'Dough'!C7 holds '1,5' where a number should be."
            },
            {
                new Refusal.Damaged(new Damage.BrokenXml("xl/workbook.xml", 3, 14)),
                "xl/workbook.xml is no well-formed XML at line 3, column 14"
            },
            {
                new Refusal.Damaged(new Damage.MissingText(new CellAddress("Dough", 7, 3))),
                "'Dough'!C7 refers to a text that is not there"
            },
            {
                new Refusal.TooLarge(Excess.PackingRatio, 400) { Part = "xl/sheet1.xml" },
                "its part xl/sheet1.xml unpacks to more than 400 times its size"
            },
            { new Refusal.Oversized(70L * 1024 * 1024), "larger than any practice workbook (70 MB)" },
            {
                new Refusal.Packed(PackingFault.TooDeep, 4),
                "More than 4 zip archives are packed into one another here. Please hand in the workbook itself (.xlsx) again, not packed."
            },
            { new Refusal.Unopened(OpeningFault.Gone), "was gone when it was to be read" },
        };

    /// <summary>What a student is to do about, every way there is of saying it: a new one must be looked at here.</summary>
    public static IEnumerable<Refusal> Each =>
        [
            .. Every.Of<Refusal>(),
            .. Every.Of<Damage>().Select(damage => new Refusal.Damaged(damage)),
            .. Enum.GetValues<Excess>().Select(what => new Refusal.TooLarge(what, 1)),
            .. Enum.GetValues<FileKind>().Select(kind => new Refusal.OtherKind(kind)),
            .. Enum.GetValues<PackingFault>().Select(what => new Refusal.Packed(what, 1)),
            .. Enum.GetValues<OpeningFault>().Select(why => new Refusal.Unopened(why)),
            .. Enum.GetValues<LeftoverKind>().Select(by => new Refusal.Leftover(by)),
        ];

    [Theory]
    [MemberData(nameof(Said))]
    public void A_refusal_is_said_with_its_parts_cells_and_numbers(Refusal refusal, string words) =>
        Assert.Contains(words, RefusalWords.Of(refusal), StringComparison.Ordinal);

    [Fact]
    public void Every_refusal_there_is_says_what_to_do_now() =>
        Assert.All(Each.Where(refusal => refusal is not Refusal.Leftover), refusal =>
            Assert.Matches("(hand|Hand) (it|that file|that|in)|hand (it|in)", RefusalWords.Of(refusal))
        );

    [Fact]
    public void Every_leftover_has_words() =>
        Assert.All(Each.OfType<Refusal.Leftover>(), leftover => Assert.NotEmpty(RefusalWords.Of(leftover)));
}
