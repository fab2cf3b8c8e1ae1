using System.Globalization;
using ClassKit.Terms.Bench;

namespace ClassKit.Workbooks.Bench;

/// <summary>Where teams, students and criteria stand on the sheet for bench marks.</summary>
internal static class BenchGrid
{
    public const string Sheet = "Bench marks";
    public const string LevelsSheet = "Levels";
    public const string WhoHead = "Who";
    public const string IdHead = "Id";
    public const string TeamHead = "Team";
    public const string CommentHead = "What was seen";
    public const string MarkerHead = "Marked by";
    public const string FormHead = "Form";
    public const int MarkerRow = 3;
    public const int HeadRow = 5;
    public const int FirstRow = 6;
    public const int WhoColumn = 1;
    public const int IdColumn = 2;
    public const int TeamColumn = 3;
    public const int FirstCriterion = 4;

    /// <summary>What a team has in the column of ids; no student's id has brackets.</summary>
    public static string IdOf(int team) => string.Create(CultureInfo.InvariantCulture, $"(team {team})");

    /// <summary>True of what a team has there, whatever the form.</summary>
    public static bool IsTeam(string id) => id.StartsWith('(');

    public static int CommentColumn(BenchForm form) => FirstCriterion + form.Scale.Criteria.Count;
}
