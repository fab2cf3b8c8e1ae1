using ClassKit.CellFormulas.Values;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Tests.Samples;
using ClassKit.Terms.Work;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Terms;

namespace ClassKit.Workbooks.Tests.Terms;

/// <summary>Grades that the workbook's live formulas come to, against those of the rule, on random terms and rules.</summary>
public sealed class TermWorkbookTests
{
    private const int Terms = 120;

    /// <summary>Those whose workbooks are made.</summary>
    private static readonly int Written = Trials.Of(Terms, 3);

    private static readonly IReadOnlyList<SchoolTerm> Random = [.. Enumerable.Range(1, Terms).Select(seed => RandomTerms.Of((ulong)seed))];

    /// <summary>Written without values, so that every value that comes back was computed by LibreOffice.</summary>
    [Fact]
    public void LibreOffice_comes_to_the_grades_of_the_rule()
    {
        var saved = LibreOffice.SaveAgain([
            .. Random.Take(Written).Select(term => TermWorkbookWriter.WithoutValues(term, TermGrader.Grade(term))),
        ]);

        Assert.All(Random.Zip(saved), pair => AssertGrades(pair.First, pair.Second));
    }

    [Fact]
    public void The_values_stored_beside_the_formulas_are_the_grades_of_the_rule() =>
        Assert.All(Random.Take(Written), term => AssertGrades(term, TermWorkbookWriter.Write(term, TermGrader.Grade(term))));

    [Fact]
    public void Random_terms_reach_what_there_is_to_reach()
    {
        var grades = Random.SelectMany(TermGrader.Grade).ToList();

        Assert.True(grades.Count(grade => grade.Place is not null) > 500);
        Assert.True(grades.Count(grade => grade.Place < grade.ByAverage) > 50);
        Assert.Equal(Enum.GetValues<Standing>(), grades.SelectMany(grade => grade.Works).Select(work => work.Standing).Distinct().Order());
        Assert.True(grades.SelectMany(grade => grade.Works).SelectMany(work => work.Sittings).Count(sitting => sitting.IsCapped) > 50);
        Assert.True(Random.Select(term => term.Rule.Rounding).Distinct().Count() > 10);
    }

    [Fact]
    public void The_same_term_gives_the_same_bytes() =>
        Assert.Equal(
            TermWorkbookWriter.Write(Random[0], TermGrader.Grade(Random[0])),
            TermWorkbookWriter.Write(Random[0], TermGrader.Grade(Random[0]))
        );

    /// <summary>
    /// Whoever clicks a mark or a share reads a number that was meant: a third stands there as one, and not as a row of threes. Percentages
    /// of works marked by halves and quarters have four decimals.
    /// </summary>
    [Fact]
    public void What_is_typed_is_framed_and_open_the_rest_is_locked_and_no_number_is_longer_than_meant() =>
        Assert.All(Random.Take(Written), term =>
        {
            var cells = WrittenCell.Of(TermWorkbookWriter.Write(term, TermGrader.Grade(term)));
            Assert.All(cells, cell => Assert.True(cell.IsProtected && !cell.HasPassword, cell.Sheet));
            Assert.All(cells, cell => Assert.True(cell.IsLocked != cell.IsFramed, $"{cell}"));
            Assert.True(cells.Count(cell => !cell.IsLocked) > term.Class.Students.Count);
            Assert.All(cells.SelectMany(cell => cell.Constants), number => Assert.True(WrittenCell.Decimals(number) <= 4, number));
        });

    private static void AssertGrades(SchoolTerm term, byte[] workbook)
    {
        var snapshot = ReturnedWorkbookReader.Read(workbook).Workbook!;
        foreach (var (index, grade) in TermGrader.Grade(term).Index())
        {
            CellValue At(int column) =>
                snapshot.Find(new(TermGrid.GradesSheet, TermGrid.FirstRow + index, column))?.Stored ?? CellValue.Blank;
            void AssertNumber(decimal? expected, int column)
            {
                var what = $"{term.Rule.Rounding} {grade.Student.Id} column {column}: {At(column)} instead of {expected}";
                Assert.True(
                    expected is { } number
                        ? At(column).IsNumber && Math.Abs(At(column).Number - (double)number) < 1e-9
                        : IsEmpty(At(column)),
                    what
                );
            }

            var behind = TermGrid.FirstColumn + term.Rule.Categories.Count;
            foreach (var (at, category) in grade.Categories.Index())
                AssertNumber(category.Share, TermGrid.FirstColumn + at);
            AssertNumber(grade.Percent, behind);
            AssertNumber(grade.Rounded, behind + 1);
            AssertGrade(term, grade.ByAverage, At(behind + 2));
            foreach (var (at, line) in grade.Lines.Index())
                AssertNumber(line.Share, behind + 3 + at);
            AssertGrade(term, grade.Place, At(behind + 3 + grade.Lines.Count));
        }
    }

    private static void AssertGrade(SchoolTerm term, int? place, CellValue stored) =>
        Assert.Equal(
            place is { } at ? term.Rule.Scale.Steps[at].Grade : "",
            stored.IsText ? stored.Text
                : IsEmpty(stored) ? ""
                : stored.ToString()
        );

    private static bool IsEmpty(CellValue value) => value.Kind == CellValueKind.Blank || (value.IsText && value.Text.Length == 0);
}
