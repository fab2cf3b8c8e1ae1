using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;

namespace ClassKit.Workbooks.Terms;

/// <summary>Where students, marks and shares stand in the workbook of a term. Students have the same row on every sheet.</summary>
internal sealed class TermGrid
{
    public const string GradesSheet = "Grades";
    public const string MarksSheet = "Marks";
    public const string SharesSheet = "Shares";
    public const string RuleSheet = "Rule";
    public const int HeadRow = 4;
    public const int WeightRow = 5;
    public const int FirstRow = 6;
    public const int FirstColumn = 3;

    public TermGrid(SchoolTerm term, IReadOnlyList<TermGrade> grades)
    {
        Term = term;
        LastRow = FirstRow + Math.Max(1, grades.Count) - 1;
        var attempts = term.Attempts.ToLookup(attempt => attempt.Assignment);
        var (mark, share) = (FirstColumn, FirstColumn);
        foreach (var category in term.Rule.Categories)
        {
            var first = share;
            foreach (var work in term.Assignments.Where(work => work.Category == category.Name))
            {
                List<SittingColumns> sittings = [];
                for (var sitting = 1; sitting <= attempts[work.Id].Select(attempt => attempt.Sitting).DefaultIfEmpty(1).Max(); sitting++)
                {
                    var marks = attempts[work.Id].Where(attempt => attempt.Sitting == sitting).Select(attempt => attempt.Mark).ToList();
                    sittings.Add(
                        new(
                            sitting,
                            mark++,
                            marks.Exists(one => one.Lateness != Lateness.InTime) ? mark++ : null,
                            marks.Exists(one => one.State == MarkState.Marked && one.OutOf != work.OutOf) ? mark++ : null
                        )
                    );
                }
                Works.Add(new(work, share++, sittings));
            }
            Blocks.Add(new(category, first, share - 1, share++));
        }
        foreach (var sat in Works.Where(work => work.Sittings.Count > 1).SelectMany(work => work.Sittings))
            sat.Share = share++;
        foreach (var line in term.Rule.Lines.Where(line => line.Criterion is not null))
        {
            CriterionColumns[line] = (share, share + Works.Count(work => work.Work.Category == line.Category) - 1);
            share += Works.Count(work => work.Work.Category == line.Category);
        }
        LastMarkColumn = Math.Max(FirstColumn, mark - 1);
        LastShareColumn = share - 1;
    }

    public SchoolTerm Term { get; }

    public List<WorkColumns> Works { get; } = [];

    public List<CategoryBlock> Blocks { get; } = [];

    /// <summary>
    /// First and last column, on the sheet of shares, of what a criterion earned in each work; last before first where there is no work.
    /// </summary>
    public Dictionary<PassLine, (int First, int Last)> CriterionColumns { get; } = [];

    public int LastRow { get; }

    public int LastMarkColumn { get; }

    public int LastShareColumn { get; }

    public static string Cell(int column, int row, bool isRowFixed = false) =>
        string.Create(CultureInfo.InvariantCulture, $"{CellAddress.ColumnLetters(column)}{(isRowFixed ? "$" : "")}{row}");

    public static string Along(int first, int last, int row, bool isRowFixed = false) =>
        $"{Cell(first, row, isRowFixed)}:{Cell(last, row, isRowFixed)}";

    /// <summary>The columns of one sitting.</summary>
    internal sealed record SittingColumns(int Sitting, int Mark, int? Late, int? OutOf)
    {
        /// <summary>On the sheet of shares, what this sitting is worth; 0 where the work was sat once.</summary>
        public int Share { get; set; }
    }

    /// <summary>The columns of one work: its share on the sheet of shares, its sittings on the sheet of marks.</summary>
    internal sealed record WorkColumns(Assignment Work, int Share, IReadOnlyList<SittingColumns> Sittings);

    /// <summary>
    /// The works of a category, side by side on the sheet of shares, and its result behind them; last before first where there is no work.
    /// </summary>
    internal sealed record CategoryBlock(Category Category, int First, int Last, int Result);
}
