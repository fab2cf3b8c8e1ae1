using ClassKit.Exercises.Deadlines;

namespace ClassKit.Exercises.Cohorts;

/// <summary>The students of one class, in the order of their list.</summary>
/// <param name="Cohort">What the class is called; empty if no profile says so.</param>
/// <param name="Students">At least one; ids are unique.</param>
public sealed record Roster(string Cohort, IReadOnlyList<Student> Students)
{
    /// <summary>How its file was understood; null for one that no file says.</summary>
    public RosterOrigin? Origin { get; init; }

    /// <summary>
    /// What single students were promised, by their ids; those who have everything as the class has it are not among them.
    /// </summary>
    public IReadOnlyDictionary<string, Arrangement> Arrangements { get; init; } = new Dictionary<string, Arrangement>();

    /// <summary>What one student was promised.</summary>
    /// <param name="student">The student's id.</param>
    public Arrangement ArrangementOf(string student) => Arrangements.GetValueOrDefault(student, Arrangement.None);

    /// <summary>Where the class's clocks are set to; null if nobody has said.</summary>
    public ClassTimeZone? TimeZone { get; init; }

    /// <summary>What the class prints on; null if nobody has said.</summary>
    public Paper? Paper { get; init; }
}
