using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;

namespace ClassKit.Terms.Trials;

/// <summary>Three invented students taken through a rule, so that its author sees what it does before a real student does.</summary>
public static class RuleTrial
{
    private const decimal OutOf = 20;

    private static readonly IReadOnlyList<Student> Students =
    [
        new("steady", "Ines, who is steady"),
        new("uneven", "Otto, who was excused once, absent once, and sat once more"),
        new("strong", "Mira, who is strong and misses what must be passed"),
    ];

    /// <summary>The invented term; in every category as many works as the rule drops and three more.</summary>
    public static SchoolTerm Of(GradeRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        List<Assignment> works =
        [
            .. rule.Categories.SelectMany(category =>
                Enumerable
                    .Range(1, category.DropLowest + 3)
                    .Select(number => new Assignment(
                        $"{category.Name} {number}",
                        $"{category.Name} {number}",
                        WorkKind.TypedMarks,
                        category.Name,
                        OutOf
                    ))
            ),
        ];
        return new(
            "Three invented students",
            new("", Students),
            rule,
            works,
            [
                .. works.SelectMany(work =>
                    Attempts(work, works.Where(other => other.Category == work.Category).TakeWhile(other => other != work).Count(), rule)
                ),
            ]
        );
    }

    private static IEnumerable<Attempt> Attempts(Assignment work, int place, GradeRule rule)
    {
        var lines = rule.Lines.Where(line => line.Category == work.Category).ToList();
        var isFirst = work.Category == rule.Categories[0].Name;
        yield return new("steady", work.Id, 1, Marked(0.8m, lines, null));
        yield return new(
            "uneven",
            work.Id,
            1,
            place switch
            {
                0 when isFirst => Mark.Excused,
                0 => Mark.Absent,
                1 => Marked(0.4m, lines, null),
                _ => Marked(0.9m, lines, null),
            }
        );
        if (place == 1 && isFirst)
            yield return new("uneven", work.Id, 2, Marked(1, lines, null));
        yield return new("strong", work.Id, 1, Marked(0.95m, lines, rule.Lines is [var line, ..] ? line : null));
    }

    /// <summary>A mark, and where a line is to be missed one that misses it by a twentieth.</summary>
    private static Mark Marked(decimal share, IReadOnlyList<PassLine> lines, PassLine? missed)
    {
        var below = missed is null ? 0 : Math.Max(0, Unit.Percent.Held(missed.AtLeast) - 0.05m);
        var points = missed is { Criterion: null } && lines.Contains(missed) ? below : share;
        return Mark.Of(points * OutOf, OutOf) with
        {
            Criteria =
            [
                .. lines
                    .Where(line => line.Criterion is not null)
                    .Select(line => new CriterionMark(line.Criterion!, line == missed ? below : share)),
            ],
        };
    }
}
