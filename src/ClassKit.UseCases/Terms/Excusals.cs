using ClassKit.Content.Terms;
using ClassKit.Terms.Marks;

namespace ClassKit.UseCases.Terms;

/// <summary>Who need not do a work, as the class's list arranges it.</summary>
internal static class Excusals
{
    /// <summary>The work's attempts, and a word for each who is excused from it and did not sit it.</summary>
    /// <param name="plan">The term.</param>
    /// <param name="work">The work.</param>
    /// <param name="lessons">The ids of the lessons that it was dealt from; none for other kinds of work.</param>
    /// <param name="attempts">What came of it.</param>
    public static List<Attempt> With(TermPlan plan, PlannedWork work, IReadOnlyCollection<string> lessons, IEnumerable<Attempt> attempts)
    {
        List<Attempt> all = [.. attempts];
        var sat = all.Select(attempt => attempt.Student).ToHashSet();
        all.AddRange(
            plan.Class.Students.Where(student =>
                    !sat.Contains(student.Id)
                    && plan.Class.ArrangementOf(student.Id).ExcusedFrom.Any(from => from == work.Title || lessons.Contains(from))
                )
                .Select(student => new Attempt(student.Id, work.Title, 1, Mark.Excused))
        );
        return all;
    }
}
