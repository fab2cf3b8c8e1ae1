using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Entries;

/// <summary>
/// Workbooks that are typed into: what is for typing is framed and open, everything else is locked, and no number that was put there shows
/// the noise of a computation to whoever clicks its cell.
/// </summary>
public sealed class EntriesAndConstantsTests
{
    /// <summary>Hundredths of a percent, and thousandths of a gram or of money.</summary>
    private const int MostDecimals = 4;

    /// <summary>What guards a comparison against the noise of binary fractions is one of ours.</summary>
    private const string Guard = "1E-9";

    public static TheoryData<string, string> Files =>
        new(from pack in Packs.Keys from file in new[] { "requisition.xlsx", "observations.xlsx" } select (pack, file));

    private static readonly Dictionary<string, Lazy<BuiltPack>> Packs = new()
    {
        ["metric and cups"] = new(() => BuiltPack.Demo),
        ["mountain"] = new(() => BuiltPack.Mountain),
        ["fried and steamed"] = new(() => BuiltPack.NoOven),
        ["a series"] = new(() => BuiltPack.LongMorning),
        ["ounces"] = new(() => BuiltPack.Adapted("one-tin-three-lifts", "class.md", "units: us")),
        ["uneven teams"] = new(() => BuiltPack.Adapted("one-tin-three-lifts", "class.md", "students: 25")),
    };

    [Theory]
    [MemberData(nameof(Files))]
    public void What_is_typed_is_framed_and_open_and_the_rest_is_locked_without_a_password(string pack, string file)
    {
        var cells = WrittenCell.Of(Packs[pack].Value.Bytes(file));

        Assert.All(cells, cell => Assert.True(cell.IsProtected && !cell.HasPassword, cell.Sheet));
        Assert.All(cells, cell => Assert.True(cell.IsLocked != cell.IsFramed, $"{cell}"));
        Assert.All(cells.GroupBy(cell => cell.Sheet), sheet => Assert.Contains(sheet, cell => !cell.IsLocked));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void No_constant_has_more_decimals_than_mean_something(string pack, string file) =>
        Assert.All(WrittenCell.Of(Packs[pack].Value.Bytes(file)), cell =>
            Assert.All(cell.Constants.Where(number => number != Guard), number =>
                Assert.True(WrittenCell.Decimals(number) <= MostDecimals, $"{cell.Address}: {number} in {cell.Formula}")
            )
        );
}
