using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Outlooks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Tests.Samples;
using ClassKit.Terms.Work;

namespace ClassKit.Terms.Tests.Grades;

/// <summary>What is needed in work that has no mark yet.</summary>
public sealed class OutlookTests
{
    private static readonly Student Student = new("ada", "Ada");

    private static readonly SchoolTerm Term = new(
        "Term",
        new("", [Student]),
        new(
            "rule",
            "Rule",
            [new("Work", 1, 0, CategoryCounting.Alike)],
            [],
            new([new("Low", 0), new("Middle", 60), new("High", 80), new("Top", 95)]),
            new(ResitChoice.Better, 1),
            AbsenceRule.Zero,
            0,
            MarkerRule.Mean,
            new(1, TieRule.Up)
        ),
        [
            new("a", "A", WorkKind.TypedMarks, "Work", 20),
            new("b", "B", WorkKind.TypedMarks, "Work", 20),
            new("c", "C", WorkKind.TypedMarks, "Work", 40),
        ],
        []
    );

    private static Outlook? Of(params Attempt[] attempts) => Outlook.Of(Term, TermGrader.Grade(Term, Student, attempts));

    [Fact]
    public void One_mark_is_asked_for_in_points()
    {
        // 16 and 14 of 20 are 80 % and 70 %. For 79.5 %, which rounds up to 80, the third needs 238.5 - 150 = 88.5 % of 40: 35.4, and in
        // quarters 35.5. For 59.5: 178.5 - 150 = 28.5 % of 40: 11.4, in quarters 11.5. For 94.5: 133.5 %.
        var outlook = Of(new("ada", "a", 1, Mark.Of(16, 20)), new("ada", "b", 1, Mark.Of(14, 20)));

        Assert.Equal(
            [
                new(0, OutlookState.Sure, 0),
                new(1, OutlookState.Needs, 11.5m / 40),
                new(2, OutlookState.Needs, 35.5m / 40),
                new(3, OutlookState.OutOfReach, 1),
            ],
            outlook!.Steps
        );
    }

    [Fact]
    public void Several_marks_are_asked_for_as_one_share()
    {
        // With 80 % in one of three: 2x + 80 is to reach 178.5, 238.5 and 283.5: 49.25, 79.25 and 101.75, in whole percent.
        var outlook = Of(new("ada", "a", 1, Mark.Of(16, 20)), new("ada", "b", 1, Mark.NotDue));

        Assert.Equal(["B", "C"], outlook!.Open.Select(work => work.Title));
        Assert.Equal(
            [
                new(0, OutlookState.Sure, 0),
                new(1, OutlookState.Needs, 0.5m),
                new(2, OutlookState.Needs, 0.8m),
                new(3, OutlookState.OutOfReach, 1),
            ],
            outlook.Steps
        );
    }

    [Fact]
    public void Nothing_is_asked_of_who_has_every_mark() =>
        Assert.Null(Of(new("ada", "a", 1, Mark.Absent), new("ada", "b", 1, Mark.Excused), new("ada", "c", 1, Mark.Of(1, 40))));

    /// <summary>On random terms: with the share that is named the grade is reached, and with a little less it is not.</summary>
    [Fact]
    public void What_is_named_is_the_least_that_does()
    {
        var asked = 0;
        foreach (var term in Enumerable.Range(1, 150).Select(seed => RandomTerms.Of((ulong)seed)))
        {
            foreach (var grade in TermGrader.Grade(term))
            {
                if (Outlook.Of(term, grade) is not { Open: [var work] } outlook)
                    continue;
                var others = term
                    .Attempts.Where(attempt =>
                        attempt.Student == grade.Student.Id && (attempt.Assignment != work.Id || attempt.Mark.State != MarkState.NotDue)
                    )
                    .ToList();
                var sitting =
                    1 + others.Where(attempt => attempt.Assignment == work.Id).Select(attempt => attempt.Sitting).DefaultIfEmpty().Max();
                var hasLine = term.Rule.Lines.Any(line => line.Category == work.Category && line.Criterion is not null);
                if (hasLine)
                    continue;
                int? With(decimal points) =>
                    TermGrader
                        .Grade(term, grade.Student, [.. others, new(grade.Student.Id, work.Id, sitting, Mark.Of(points, work.Weight))])
                        .Place;
                foreach (var step in outlook.Steps.Where(step => step.State == OutlookState.Needs))
                {
                    Assert.True(With(step.Share * work.Weight) >= step.Place);
                    Assert.True(Math.Max(0, (step.Share * work.Weight) - 0.25m) is var less && (With(less) ?? -1) < step.Place);
                    asked++;
                }
            }
        }
        Assert.True(asked > 50, $"{asked} shares were asked for");
    }
}
