using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Randomness;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;

namespace ClassKit.Terms.Tests.Samples;

/// <summary>Terms, rules and marks of every kind, decided by a seed.</summary>
internal static class RandomTerms
{
    public const string Criterion = "Safe and clean work";

    public static SchoolTerm Of(ulong seed, int students = 6)
    {
        var draws = SeededDraws.For(seed, "term");
        var rule = Rule(draws);
        List<Assignment> works = [];
        foreach (var category in rule.Categories)
        {
            var count = draws.Below(6);
            for (var work = 0; work < count; work++)
                works.Add(
                    new(
                        $"w{works.Count}",
                        $"Work {works.Count + 1}",
                        (WorkKind)draws.Below(4),
                        category.Name,
                        Pick(draws, 3m, 7m, 10m, 12.5m, 20m, 30m)
                    )
                );
        }
        List<Student> roster = [.. Enumerable.Range(1, students).Select(number => new Student($"s{number}", $"Student {number}"))];
        return new(
            "Random term",
            new("Random class", roster),
            rule,
            works,
            [.. roster.SelectMany(student => works.SelectMany(work => Attempts(draws, student, work, rule)))]
        );
    }

    private static GradeRule Rule(SeededDraws draws)
    {
        List<int> weights = [];
        var left = 20;
        for (var category = draws.Below(4); category > 0 && left > 1; category--)
            weights.Add(Take(1 + draws.Below(left - 1)));
        weights.Add(left);
        int Take(int weight)
        {
            left -= weight;
            return weight;
        }

        List<Category> categories =
        [
            .. weights.Select(
                (weight, at) =>
                    draws.Below(3) == 0
                        ? new Category($"Category {at + 1}", weight / 20m, 0, CategoryCounting.ByPoints)
                        : new Category($"Category {at + 1}", weight / 20m, draws.Below(4), CategoryCounting.Alike)
            ),
        ];
        decimal[] froms = [.. Enumerable.Range(0, 1 + draws.Below(5)).Select(_ => 0.5m * (1 + draws.Below(199))).Distinct().Order()];
        GradeScale scale = new([new("G0", 0), .. froms.Select((from, at) => new ScaleStep($"G{at + 1}", from))]);
        List<PassLine> lines =
        [
            .. Enumerable
                .Range(0, draws.Below(3))
                .Select(_ => new PassLine(
                    categories[draws.Below(categories.Count)].Name,
                    draws.Below(2) == 0 ? Criterion : null,
                    5 * (1 + draws.Below(20)),
                    draws.Below(scale.Steps.Count - 1)
                ))
                .DistinctBy(line => (line.Category, line.Criterion)),
        ];
        return new(
            "rule",
            "Random rule",
            categories,
            lines,
            scale,
            new((ResitChoice)draws.Below(2), Pick(draws, 1m, 1m, 0.7m, 0.55m)),
            (AbsenceRule)draws.Below(2),
            Pick(draws, 0m, 0.1m, 0.25m, 1m / 8),
            MarkerRule.Mean,
            new(Pick<decimal?>(draws, null, 0.1m, 0.5m, 1m, 5m), (TieRule)draws.Below(3))
        );
    }

    private static IEnumerable<Attempt> Attempts(SeededDraws draws, Student student, Assignment work, GradeRule rule)
    {
        var sittings = draws.Below(8) switch
        {
            0 => 0,
            1 => 2,
            2 => 3,
            _ => 1,
        };
        for (var sitting = 1; sitting <= sittings; sitting++)
            yield return new(student.Id, work.Id, sitting, Mark(draws, work, rule));
    }

    private static Mark Mark(SeededDraws draws, Assignment work, GradeRule rule) =>
        draws.Below(8) switch
        {
            0 => Marks.Mark.Absent,
            1 => Marks.Mark.Excused,
            2 when draws.Below(2) == 0 => Marks.Mark.NotDue,
            _ => Marked(draws, work, rule, draws.Below(6) == 0 ? work.Weight + 3 : work.Weight),
        };

    private static Mark Marked(SeededDraws draws, Assignment work, GradeRule rule, decimal outOf) =>
        Marks.Mark.Of(draws.Below((int)(outOf * 4) + 1) / 4m, outOf) with
        {
            Lateness = draws.Below(5) == 0 ? (Lateness)(1 + draws.Below(2)) : Lateness.InTime,
            Criteria =
                rule.Lines.Any(line => line.Category == work.Category && line.Criterion is not null) && draws.Below(4) > 0
                    ? [new(Criterion, draws.Below(4) / 3m)]
                    : [],
        };

    private static T Pick<T>(SeededDraws draws, params ReadOnlySpan<T> from) => from[draws.Below(from.Length)];
}
