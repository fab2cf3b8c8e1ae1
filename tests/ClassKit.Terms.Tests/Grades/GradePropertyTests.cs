using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Randomness;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Tests.Samples;
using ClassKit.Terms.Work;

namespace ClassKit.Terms.Tests.Grades;

/// <summary>What must hold of any rule and any marks, on random ones.</summary>
public sealed class GradePropertyTests
{
    private const int Seeds = 400;

    private static IEnumerable<SchoolTerm> Terms => Enumerable.Range(1, Seeds).Select(seed => RandomTerms.Of((ulong)seed));

    [Fact]
    public void The_order_of_entry_changes_nothing()
    {
        var draws = SeededDraws.For(1, "shuffle");
        Assert.All(Terms, term =>
            Assert.Equal(
                TermGrader.Grade(term).Select(Shown),
                TermGrader.Grade(term with { Attempts = [.. term.Attempts.OrderBy(_ => draws.Below(1_000_000))] }).Select(Shown)
            )
        );
    }

    [Fact]
    public void An_excused_mark_never_lowers_against_a_zero() =>
        EachWork(
            (term, student, work, others) =>
            {
                // The criteria of a zero are zeros.
                var zero = Mark.Of(0, work.Weight) with { Criteria = [new(RandomTerms.Criterion, 0)] };
                var excused = TermGrader.Grade(term, student, [.. others, new(student.Id, work.Id, 1, Mark.Excused)]);
                if (excused.Percent is not null)
                    AssertNoLower(TermGrader.Grade(term, student, [.. others, new(student.Id, work.Id, 1, zero)]), excused);
            }
        );

    [Fact]
    public void A_better_mark_never_lowers()
    {
        var draws = SeededDraws.For(2, "better");
        var raised = 0;
        foreach (var term in Terms)
        {
            foreach (var (at, attempt) in term.Attempts.Index().Where(entry => entry.Item.Mark.State == MarkState.Marked))
            {
                var mark = attempt.Mark;
                var better = Mark.Of(mark.Points + ((mark.OutOf - mark.Points) * draws.Below(5) / 4), mark.OutOf) with
                {
                    Lateness = mark.Lateness,
                    Criteria =
                    [
                        .. mark.Criteria.Select(criterion =>
                            criterion with
                            {
                                Share = criterion.Share + ((1 - criterion.Share) * draws.Below(3) / 2),
                            }
                        ),
                    ],
                };
                var student = term.Class.Students.First(student => student.Id == attempt.Student);
                AssertNoLower(
                    TermGrader.Grade(term, student, term.Attempts.Where(one => one.Student == student.Id)),
                    TermGrader.Grade(
                        term,
                        student,
                        term.Attempts.Select((one, place) => place == at ? attempt with { Mark = better } : one)
                            .Where(one => one.Student == student.Id)
                    )
                );
                raised++;
            }
        }
        Assert.True(raised > 5000, $"{raised} marks were raised");
    }

    /// <summary>Against every way to leave out as many works.</summary>
    [Fact]
    public void Dropping_keeps_the_best()
    {
        var dropped = 0;
        foreach (
            var category in Terms
                .SelectMany(TermGrader.Grade)
                .SelectMany(grade => grade.Categories)
                .Where(category => category.Category.DropLowest > 0 && category.Share is not null)
        )
        {
            decimal[] shares = [.. category.Works.Where(work => work.Share is not null).Select(work => work.Share!.Value)];
            var left = Math.Max(1, shares.Length - category.Category.DropLowest);
            var best = Enumerable
                .Range(0, 1 << shares.Length)
                .Where(set => int.PopCount(set) == left)
                .Max(set => shares.Where((_, at) => (set >> at & 1) == 1).Sum() / left);
            Assert.Equal(best, category.Share!.Value, 20);
            Assert.Equal(shares.Length - left, category.Works.Count(work => work.Standing == Standing.Dropped));
            dropped += shares.Length - left;
        }
        Assert.True(dropped > 500, $"{dropped} works were dropped");
    }

    /// <summary>What is left of the weights always makes one whole, and the working adds up to the result.</summary>
    [Fact]
    public void The_working_adds_up() => Assert.All(Terms.SelectMany(TermGrader.Grade).Where(grade => grade.Percent is not null), grade =>
        {
            Assert.Equal(1, grade.Categories.Sum(category => category.WeightNow), 20);
            Assert.Equal(grade.Percent!.Value, 100 * grade.Categories.Sum(category => category.WeightNow * (category.Share ?? 0)), 20);
        });

    [Fact]
    public void A_missed_line_holds_the_grade_back_whatever_the_average()
    {
        var missed = 0;
        foreach (var grade in Terms.SelectMany(TermGrader.Grade).Where(grade => grade.Place is not null))
        {
            var caps = grade.Lines.Where(line => line.State == LineState.Missed).Select(line => line.Line.OtherwiseAtMost).ToList();
            Assert.Equal(caps.Append(grade.ByAverage!.Value).Min(), grade.Place);
            missed += caps.Count;
        }
        Assert.True(missed > 200, $"{missed} lines were missed");
    }

    private static void EachWork(Action<SchoolTerm, Student, Assignment, IEnumerable<Attempt>> check)
    {
        foreach (var term in Terms)
        {
            foreach (var student in term.Class.Students)
            {
                foreach (var work in term.Assignments)
                    check(
                        term,
                        student,
                        work,
                        term.Attempts.Where(attempt => attempt.Student == student.Id && attempt.Assignment != work.Id)
                    );
            }
        }
    }

    private static void AssertNoLower(TermGrade before, TermGrade after)
    {
        Assert.True(
            Math.Round(after.Percent!.Value, 20, MidpointRounding.ToEven) >= Math.Round(before.Percent!.Value, 20, MidpointRounding.ToEven),
            $"{before.Percent} became {after.Percent}"
        );
        Assert.True(after.Place >= before.Place, $"{before.Place} became {after.Place}");
    }

    private static string Shown(TermGrade grade) =>
        $"{grade.Percent} {grade.Rounded} {grade.Place} {string.Join(' ', grade.Works.Select(work => $"{work.Standing}{work.Share}"))}";
}
