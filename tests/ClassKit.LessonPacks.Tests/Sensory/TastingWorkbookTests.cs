using ClassKit.CellFormulas.Sheets;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Sensory;

/// <summary>What an instructor types, worked out by LibreOffice.</summary>
public sealed class TastingWorkbookTests
{
    private const string File = "tasting.xlsx";

    private const int Answers = 4;
    private const int Right = 5;
    private const int Fewest = 7;
    private const int Chance = 8;
    private const int Shows = 9;

    /// <summary>A slip over a formula here turns what a class found into something else without a word.</summary>
    [Fact]
    public void Formulas_are_locked_what_seats_wrote_is_open_and_no_password_is_asked()
    {
        var cells = WrittenCell.Of(BuiltPack.Demo.Bytes(File));

        Assert.All(cells, cell => Assert.True(cell.IsProtected && !cell.HasPassword, cell.Sheet));
        Assert.All(cells.Where(cell => cell.Formula is not null), cell => Assert.True(cell.IsLocked, $"{cell}"));
        Assert.All(cells, cell => Assert.True(cell.IsLocked || cell.IsFramed, $"{cell}"));
        // Triangle and scales; what guesses come to has nothing to type.
        Assert.Equal(2, cells.Where(cell => !cell.IsLocked).Select(cell => cell.Sheet).Distinct().Count());
    }

    [Fact]
    public void Nothing_typed_shows_nothing()
    {
        var book = BuiltPack.Demo.Workbook(File);

        Assert.Equal(0, Found(book, Answers).Number);
        Assert.StartsWith("Too few answers", Found(book, Shows).Text, StringComparison.Ordinal);
    }

    /// <summary>
    /// ISO 4120:2004, Table A.1: of 24 answers 13 must be right for a risk of 5 %. R: pbinom(12, 24, 1/3, lower.tail = FALSE) is 0.02844,
    /// pbinom(11, 24, ...) 0.06766.
    /// </summary>
    [Theory]
    [InlineData(13, 0.02844, "A difference is shown")]
    [InlineData(12, 0.06766, "No difference is shown")]
    public void Thirteen_of_twenty_four_show_a_difference_and_twelve_do_not(int right, double chance, string shows)
    {
        var book = BuiltPack.Demo.Recalculated(
            File,
            $"""
            s = w['Triangle']
            for n in range(24):
                row = 12 + n
                odd = s.cell(row, 6).value
                others = [s.cell(row, c).value for c in (3, 4, 5) if s.cell(row, c).value != odd]
                s.cell(row, 7).value = odd if n < {right} else others[0]
            """
        );

        Assert.Equal((24, right, 13), (Found(book, Answers).Number, Found(book, Right).Number, Found(book, Fewest).Number));
        Assert.Equal(chance, Found(book, Chance).Number, 0.00001);
        Assert.StartsWith(shows, Found(book, Shows).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_that_was_not_on_the_plate_is_told_and_is_not_right()
    {
        var book = BuiltPack.Demo.Recalculated(File, "w['Triangle'].cell(12, 7).value = 1");

        Assert.Equal("not served", Cell(book, "Triangle", 12, 8).Text);
        Assert.Equal((0, 0), (Found(book, Answers).Number, Found(book, Right).Number));
    }

    /// <summary>By hand: 2, 4 and 9 have the mean 5 and, over n - 1, the standard deviation √13.</summary>
    [Fact]
    public void Means_and_spreads_are_those_of_what_was_typed()
    {
        var book = BuiltPack.Demo.Recalculated(
            File,
            """
            s = w['Scales']
            first = next(r for r in range(1, 60) if s.cell(r, 2).value == 'Seat') + 1
            for n, value in enumerate((2, 4, 9)):
                s.cell(first + n, 3).value = value
            """
        );

        Assert.Equal(5, Cell(book, "Scales", 5, 3).Number, 1e-9);
        Assert.Equal(Math.Sqrt(13), Cell(book, "Scales", 6, 3).Number, 1e-9);
        Assert.Equal("", Cell(book, "Scales", 7, 3).Text);
    }

    private static CellFormulas.Values.CellValue Found(WorkbookSnapshot book, int row) => Cell(book, "Triangle", row, 3);

    private static CellFormulas.Values.CellValue Cell(WorkbookSnapshot book, string sheet, int row, int column) =>
        book.Sheets.Single(candidate => candidate.Name == sheet).Cells[(row, column)].Stored;
}
