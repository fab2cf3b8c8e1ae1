namespace ClassKit.Exercises.Cohorts;

/// <summary>One student on a roster.</summary>
/// <param name="Id">Unique in its cohort, whatever the case of its letters; see <see cref="StudentId"/>; also the name of the student's
/// workbook file.</param>
/// <param name="Name">The name as the student writes it.</param>
/// <param name="Email">For the instructor's own mailing; never needed by ClassKit.</param>
public sealed record Student(string Id, string Name, string? Email = null)
{
    /// <summary>The team that the class list puts the student in; null where it says none. See <see cref="ClassTeam"/>.</summary>
    public string? Team { get; init; }

    /// <summary>
    /// What the student was called under the same id on earlier lists, one name or several with semicolons; null where the list says
    /// nothing. Without it a known id under another name is taken for another person; see <see cref="SamePerson"/>.
    /// </summary>
    public string? Formerly { get; init; }

    /// <summary>
    /// What pages, workbooks and sentences call the student: the name, and the id behind it where another one of the class has that name;
    /// see <see cref="Namesakes"/>.
    /// </summary>
    public string Shown { get; init; } = Name;
}
