using ClassKit.Exercises.Authoring;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;

namespace ClassKit.Terms.Outlooks;

/// <summary>What a student needs in work that has no mark yet, for each grade of the scale.</summary>
/// <param name="Open">The works that have none, in order; at least one.</param>
/// <param name="Steps">Every grade, from the lowest to the highest.</param>
public sealed record Outlook(IReadOnlyList<Assignment> Open, IReadOnlyList<OutlookStep> Steps)
{
    /// <summary>
    /// The steps in which a single mark is looked for, in points: a quarter, the finest that is usually given (common practice, no source).
    /// </summary>
    private const decimal Grain = 0.25m;

    /// <summary>The outlook of one student; null where every mark is there.</summary>
    /// <param name="term">The term.</param>
    /// <param name="grade">The student's grade as it stands.</param>
    public static Outlook? Of(SchoolTerm term, TermGrade grade)
    {
        ArgumentNullException.ThrowIfNull(term);
        ArgumentNullException.ThrowIfNull(grade);
        List<WorkResult> open = [.. grade.Works.Where(work => work.IsOpen)];
        if (open.Count == 0)
            return null;
        var grid = Grid(open);
        List<Attempt> marked = [.. grade.Works.Except(open).SelectMany(work => work.Sittings).Select(sitting => sitting.Attempt)];
        int? PlaceAt(decimal share) =>
            TermGrader.Grade(term, grade.Student, [.. marked, .. open.SelectMany(work => With(work, share, grade, term.Rule))]).Place;
        return new(
            [.. open.Select(work => work.Assignment)],
            [.. Enumerable.Range(0, term.Rule.Scale.Steps.Count).Select(place => Step(place, grid, PlaceAt))]
        );
    }

    /// <summary>A better mark never lowers a grade, so halving finds the least.</summary>
    private static OutlookStep Step(int place, List<decimal> grid, Func<decimal, int?> placeAt)
    {
        var (low, high) = (0, grid.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (placeAt(grid[middle]) >= place)
                high = middle;
            else
                low = middle + 1;
        }
        return low == grid.Count
            ? new(place, OutlookState.OutOfReach, 1)
            : new(place, low == 0 ? OutlookState.Sure : OutlookState.Needs, grid[low]);
    }

    private static List<decimal> Grid(List<WorkResult> open)
    {
        if (open is not [{ Assignment.OutOf: { } outOf }])
            return [.. Enumerable.Range(0, 101).Select(percent => Unit.Percent.Held((decimal)percent))];
        var steps = (int)Math.Min(Math.Floor(outOf / Grain), 100_000);
        return [.. Enumerable.Range(0, steps + 1).Select(step => step * Grain / outOf).Append(1).Distinct()];
    }

    private static IEnumerable<Attempt> With(WorkResult work, decimal share, TermGrade grade, GradeRule rule)
    {
        var before = work.Sittings.Select(sitting => sitting.Attempt).Where(attempt => attempt.Mark.State != MarkState.NotDue).ToList();
        var criteria =
            work.Assignment.Kind != WorkKind.BenchWork
                ? []
                : rule
                    .Lines.Where(line => line.Category == work.Assignment.Category && line.Criterion is not null)
                    .Select(line => new CriterionMark(line.Criterion!, share));
        return
        [
            .. before,
            new(
                grade.Student.Id,
                work.Assignment.Id,
                before.Select(attempt => attempt.Sitting).DefaultIfEmpty().Max() + 1,
                Mark.Of(share * work.Assignment.Weight, work.Assignment.Weight) with
                {
                    Criteria = [.. criteria],
                }
            ),
        ];
    }
}
