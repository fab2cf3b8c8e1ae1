using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Quantities;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Classes;

/// <summary>
/// How many come and into how many teams they go: as the class's file says, and where it names a class list with teams, as that has it.
/// </summary>
/// <param name="Students">How many students.</param>
/// <param name="Teams">How many teams.</param>
/// <param name="Named">The teams of the list; none where it puts nobody in one.</param>
internal sealed record ClassSize(int Students, int Teams, IReadOnlyList<ClassTeam> Named)
{
    public static ClassSize Read(Fields fields, Roster? roster, ProblemList problems)
    {
        var named = ClassTeam.Of(roster?.Students ?? []);
        var before = problems.Count;
        var students = Count("students", roster?.Students.Count);
        var teams = Count("teams", named.Count > 0 ? named.Count : null);
        var isCounted = problems.Count == before && fields.Has("students");
        if (roster is not null && students != roster.Students.Count)
            problems.Doubt(
                fields.LineOf("students"),
                $"`students` is {students}, and the class list has {roster.Students.Count}",
                named.Count > 0
                    ? "The list counts, because it has the teams: take the line out."
                    : "Correct the one that is wrong, or take the line out to follow the list."
            );
        if (named.Count > 0 && teams != named.Count)
            problems.Doubt(
                fields.LineOf("teams"),
                $"`teams` is {teams}, and the class list has {named.Count}: {string.Join(", ", named.Select(team => team.Name))}",
                "The list counts: take the line out, or correct the list."
            );
        if (named.Count > 0)
            return new(roster!.Students.Count, named.Count, named);
        if (isCounted && teams > students)
            problems.Add(
                fields.LineOf("teams"),
                $"There are {teams} teams for {students} students",
                "Every team needs a student: at most as many teams as students."
            );
        return new(students, teams, []);

        int Count(string key, int? listed) => listed is { } known && !fields.Has(key) ? known : fields.Whole(key, Bounds.Countable);
    }
}
