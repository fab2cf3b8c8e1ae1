using System.Globalization;
using System.Text.RegularExpressions;

namespace ClassKit.Exercises.Cohorts;

/// <summary>A team as the class list has it.</summary>
/// <param name="Name">What it is called behind the word team: <c>3</c>, <c>B</c>, <c>Rye</c>.</param>
/// <param name="Members">Who is in it, in the order of the list; at least one.</param>
public sealed partial record ClassTeam(string Name, IReadOnlyList<Student> Members)
{
    /// <summary>
    /// The teams of a class, by number where they have one and then by name; none where the list puts nobody in a team, or everybody in the
    /// same.
    /// </summary>
    public static IReadOnlyList<ClassTeam> Of(IReadOnlyList<Student> students)
    {
        ArgumentNullException.ThrowIfNull(students);
        List<ClassTeam> teams =
        [
            .. students
                .Where(student => student.Team is not null)
                .GroupBy(student => student.Team!, StringComparer.OrdinalIgnoreCase)
                .Select(team => new ClassTeam(team.Key, [.. team]))
                .OrderBy(team =>
                    int.TryParse(team.Name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : int.MaxValue
                )
                .ThenBy(team => team.Name, StringComparer.OrdinalIgnoreCase),
        ];
        return teams.Count > 1 ? teams : [];
    }

    /// <summary>What a team is called that a list calls so: <c>Team 3</c> is 3; null where nothing stands.</summary>
    public static string? NameIn(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return Kind().Replace(cell.Trim(), "") is { Length: > 0 } name ? name : null;
    }

    /// <summary>What a team is called by its number, counted from 1: its name where there are as many named ones as teams.</summary>
    public static string NameOf(int team, int teams, IReadOnlyList<ClassTeam> named)
    {
        ArgumentNullException.ThrowIfNull(named);
        return named.Count == teams ? named[team - 1].Name : team.ToString(CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"\A(?:team|group|bench)\s+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Kind();
}
