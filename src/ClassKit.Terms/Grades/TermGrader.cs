using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Work;

namespace ClassKit.Terms.Grades;

/// <summary>Makes grades of marks by the rule of a term.</summary>
public static class TermGrader
{
    /// <summary>The grade of every student, in the order of the class.</summary>
    public static IReadOnlyList<TermGrade> Grade(SchoolTerm term)
    {
        ArgumentNullException.ThrowIfNull(term);
        return Grade(term, term.Class.Students);
    }

    /// <summary>The grades of some students, each made before the next one is asked for.</summary>
    public static IReadOnlyList<TermGrade> Grade(SchoolTerm term, IEnumerable<Student> students)
    {
        ArgumentNullException.ThrowIfNull(term);
        var attempts = term.Attempts.ToLookup(attempt => attempt.Student);
        return [.. students.Select(student => Grade(term, student, attempts[student.Id]))];
    }

    /// <summary>The grade of one student from attempts of theirs, whatever those of the term are.</summary>
    public static TermGrade Grade(SchoolTerm term, Student student, IEnumerable<Attempt> attempts)
    {
        ArgumentNullException.ThrowIfNull(term);
        var rule = term.Rule;
        var sat = attempts.ToLookup(attempt => attempt.Assignment);
        var works = term.Assignments.ToLookup(
            assignment => assignment.Category,
            assignment => Sittings.Settle(assignment, sat[assignment.Id], rule)
        );
        var categories = Weighed([.. rule.Categories.Select(category => Categories.Settle(category, [.. works[category.Name]]))]);
        List<LineResult> lines = [.. rule.Lines.Select(line => Lines.Settle(line, categories, rule.Resit.Choice))];
        if (categories.All(category => category.Share is null))
            return new(student, categories, null, null, null, lines, null);

        var percent =
            Unit.Percent.Shown(categories.Sum(category => (category.Share ?? 0) * category.Category.Weight))
            / categories.Where(category => category.Share is not null).Sum(category => category.Category.Weight);
        var rounded = rule.Rounding.Of(percent);
        var byAverage = rule.Scale.PlaceOf(rounded);
        var place = lines.Where(line => line.State == LineState.Missed).Select(line => line.Line.OtherwiseAtMost).Append(byAverage).Min();
        return new(student, categories, percent, rounded, byAverage, lines, place);
    }

    private static IReadOnlyList<CategoryResult> Weighed(IReadOnlyList<CategoryResult> categories)
    {
        var all = categories.Where(category => category.Share is not null).Sum(category => category.Category.Weight);
        return
        [
            .. categories.Select(category =>
                category.Share is null ? category : category with { WeightNow = category.Category.Weight / all }
            ),
        ];
    }
}
