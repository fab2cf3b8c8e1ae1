using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Classes;

namespace ClassKit.UseCases.Checking;

/// <summary>A class list that puts students in teams, beside a class that does not read it.</summary>
internal static class TeamsOfList
{
    /// <summary>What is said of it; null where the class reads its list, or none beside it has teams.</summary>
    /// <param name="path">The class's file.</param>
    /// <param name="profile">The class.</param>
    /// <param name="rosters">The lists among what is checked.</param>
    public static Diagnostic? Unread(string path, ClassProfile profile, IReadOnlyList<Source> rosters)
    {
        if (profile.NamedTeams.Count > 0)
            return null;
        foreach (var list in rosters.Where(list => Path.GetDirectoryName(list.Path) == Path.GetDirectoryName(path)))
        {
            if (RosterReader.Read(list).Model is not { } roster || ClassTeam.Of(roster.Students) is not { Count: > 0 } teams)
                continue;
            var name = Path.GetFileName(list.Path);
            return new(
                path,
                null,
                $"`{name}` has {teams.Count} teams, {string.Join(", ", teams.Select(team => team.Name))}, and the class has {profile.Teams} of its own",
                $"Add `roster: {name}` at the top, and cards, run sheets and forms follow the list's teams."
            )
            {
                Weight = teams.Count == profile.Teams ? Weight.Noted : Weight.Doubtful,
            };
        }
        return null;
    }
}
