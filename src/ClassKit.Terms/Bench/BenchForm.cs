using System.Globalization;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Identity;

namespace ClassKit.Terms.Bench;

/// <summary>
/// What a marker fills in for one class and one practical rubric: a level for each team and criterion, and what is otherwise with single
/// students.
/// </summary>
/// <param name="Rubric">What the rubric is called.</param>
/// <param name="Scale">What it measures with.</param>
/// <param name="Descriptors">What is seen at each level, by criterion and level as in the scale.</param>
/// <param name="Cohort">What the class is called.</param>
/// <param name="Students">The class, in the order of its roster.</param>
/// <param name="Teams">How many teams work at the bench; at least 1.</param>
public sealed record BenchForm(
    string Rubric,
    BenchScale Scale,
    IReadOnlyList<IReadOnlyList<string>> Descriptors,
    string Cohort,
    IReadOnlyList<Student> Students,
    int Teams
)
{
    /// <summary>What the class prints on; null where nothing is said.</summary>
    public Paper? Paper { get; init; }

    /// <summary>The field with the marker's name.</summary>
    public const string Marker = "marker";

    /// <summary>What a team's number is called where a student was with none.</summary>
    public const string Away = "away";

    /// <summary>Who of the class and which rubric it is for, whatever the class is called; see <see cref="FormIdentity"/>.</summary>
    public string Identity => IdentityWith([]);

    /// <summary>True of a file that says that it is of this form; see <see cref="FormIdentity.IsOf"/>.</summary>
    /// <param name="identity">The identity in the file.</param>
    /// <param name="called">What it calls itself; null where it does not say.</param>
    public bool IsOf(string identity, string? called) => FormIdentity.IsOf(identity, called, Rubric, Cohort, IdentityWith);

    /// <summary>Criteria that are not asked of single students, by their ids; it is no other form for that.</summary>
    public IReadOnlyDictionary<string, IReadOnlySet<string>> NotAsked { get; init; } = new Dictionary<string, IReadOnlySet<string>>();

    /// <summary>True of a criterion that is not asked of a student, by the student's id.</summary>
    public bool IsLeftOut(string student, int criterion) =>
        NotAsked.TryGetValue(student, out var names) && names.Contains(Scale.Criteria[criterion].Name);

    private IReadOnlyList<ClassTeam> Named => ClassTeam.Of(Students);

    /// <summary>What a team is called behind the word team: as the roster has it, else its number.</summary>
    /// <param name="team">Its number, from 1.</param>
    public string TeamName(int team) => ClassTeam.NameOf(team, Teams, Named);

    /// <summary>The team of that name; null if there is none.</summary>
    public int? TeamCalled(string name) =>
        Enumerable
            .Range(1, Teams)
            .Where(team => TeamName(team).Equals(name, StringComparison.OrdinalIgnoreCase))
            .Select(team => (int?)team)
            .FirstOrDefault();

    /// <summary>
    /// The team that a student is put in until the marker says otherwise: the roster's, else as many in each as there can be, in the order
    /// of the roster.
    /// </summary>
    /// <param name="student">The student's place on the roster.</param>
    public int TeamOf(int student) =>
        Students[student].Team is { } named && Named.Count == Teams
            ? TeamCalled(named)!.Value
            : 1 + (int)((long)student * Teams / Math.Max(Students.Count, 1));

    /// <summary>Where a team's level for a criterion stands; both counted as in the form.</summary>
    public static string OfTeam(int team, int criterion) => string.Create(CultureInfo.InvariantCulture, $"team.{team}.{criterion}");

    /// <summary>Where what was said of a team stands.</summary>
    public static string CommentOfTeam(int team) => string.Create(CultureInfo.InvariantCulture, $"team.{team}.comment");

    /// <summary>Where a student's own level for a criterion stands.</summary>
    public static string OfStudent(Student student, int criterion) =>
        string.Create(CultureInfo.InvariantCulture, $"student.{IdOf(student)}.{criterion}");

    /// <summary>Where what was said of a student stands.</summary>
    public static string CommentOfStudent(Student student) => $"student.{IdOf(student)}.comment";

    /// <summary>Where the number of a student's team stands.</summary>
    public static string TeamOfStudent(Student student) => $"student.{IdOf(student)}.team";

    private string IdentityWith(IEnumerable<string> names) =>
        FormIdentity.Of(
            "bench marks",
            [
                Rubric,
                .. names,
                Teams.ToString(CultureInfo.InvariantCulture),
                .. Scale.Criteria.Select(criterion => $"{criterion.Name} {criterion.Weight.ToString(CultureInfo.InvariantCulture)}"),
                .. Scale.LevelNames.Zip(Scale.Levels, (name, points) => $"{name} {points.ToString(CultureInfo.InvariantCulture)}"),
                .. Students.Select(student => student.Id),
            ]
        );

    private static string IdOf(Student student)
    {
        ArgumentNullException.ThrowIfNull(student);
        return student.Id;
    }
}
