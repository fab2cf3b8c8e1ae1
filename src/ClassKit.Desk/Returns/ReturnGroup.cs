using ClassKit.Desk.Folders;
using ClassKit.Grading.Results;

namespace ClassKit.Desk.Returns;

/// <summary>Students of a round who want the same of the instructor, exceptions first.</summary>
/// <param name="Name">What stands above them.</param>
/// <param name="Students">Who they are, those first of whom there is something to say; never empty.</param>
public sealed record ReturnGroup(string Name, IReadOnlyList<StudentGrade> Students)
{
    private const string ToDecide = "To decide";

    private static readonly string[] Names = ["Could not be read", ToDecide, "Missing", "Absent or excused", "In"];

    /// <summary>True where something of theirs waits for the instructor's word.</summary>
    public bool WaitsForDecision => Name == ToDecide;

    /// <summary>The groups that have somebody; none before anything was judged.</summary>
    public static IReadOnlyList<ReturnGroup> Of(RoundState round)
    {
        ArgumentNullException.ThrowIfNull(round);
        var toDecide = round
            .Undecided.Select(one => one.Who.Id)
            .Concat(round.Unread.Select(one => one.Who.Id))
            .Concat(round.Empty.Select(student => student.Who.Id))
            .Concat((round.Grades?.Waiting ?? []).Select(one => one.Student.Id))
            .Concat(round.Misnamed.Where(one => one.HasOther).Select(one => one.Named.Id))
            .ToHashSet(StringComparer.Ordinal);
        return
        [
            .. (round.Grades?.Students ?? [])
                .GroupBy(student => Place(student, round, toDecide))
                .OrderBy(group => group.Key)
                .Select(group => new ReturnGroup(Names[group.Key], [.. group.OrderBy(student => student.Flags.Count == 0)])),
        ];
    }

    private static int Place(StudentGrade student, RoundState round, HashSet<string> toDecide) =>
        toDecide.Contains(student.Who.Id) ? 1
        : student.Status == GradeStatus.Graded && !student.CameBackEmpty ? 4
        : round.Away.ContainsKey(student.Who.Id) ? 3
        : student.Status == GradeStatus.Unreadable ? 0
        : 2;
}
