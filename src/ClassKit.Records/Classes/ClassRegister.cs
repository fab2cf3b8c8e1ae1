using ClassKit.Exercises.Cohorts;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Classes;

/// <summary>Classes, students, and who was in which class when.</summary>
public static class ClassRegister
{
    private const string Enrolled =
        "SELECT class.id, class.name, student.id, student.name, student.email, since, until FROM enrolment JOIN class ON class.id = enrolment.class JOIN student ON student.id = enrolment.student ";

    /// <summary>Every class, by name.</summary>
    public static IReadOnlyList<RecordedClass> All(RecordSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query("SELECT id, name FROM class ORDER BY name", Class);
    }

    /// <summary>The class of a name, or the one that was called so before; or null.</summary>
    public static RecordedClass? Find(RecordSession session, string name)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.One("SELECT id, name FROM class WHERE name = $1", Class, name)
            ?? session.One(
                "SELECT class.id, class.name FROM former_name JOIN class ON class.id = former_name.class WHERE former_name.name = $1",
                Class,
                name
            );
    }

    /// <summary>
    /// Calls a class otherwise from now on. It is found by its earlier names, too: what was handed out under them is still its own.
    /// </summary>
    /// <returns>The class under its new name; null where another class is or was called so, and nothing is written.</returns>
    public static RecordedClass? Rename(WritingSession session, RecordedClass named, string name)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        if (Find(session, name) is { } other && other.Id != named.Id)
            return null;
        if (name == named.Name)
            return named;
        session.Run("DELETE FROM former_name WHERE name = $1", name);
        session.Run("UPDATE class SET name = $2 WHERE id = $1", named.Id, name);
        session.Run("INSERT INTO former_name (name, class) VALUES ($1, $2)", named.Name, named.Id);
        return named with { Name = name };
    }

    /// <summary>The class of a name, which begins if there is none.</summary>
    public static RecordedClass Put(WritingSession session, string name)
    {
        ArgumentNullException.ThrowIfNull(session);
        return Find(session, name) ?? new(session.Insert("INSERT INTO class (name) VALUES ($1)", name), name);
    }

    /// <summary>The student of an id, or null.</summary>
    public static Student? FindStudent(RecordSession session, string id)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.One("SELECT id, name, email FROM student WHERE id = $1", row => Student(row, 0), id);
    }

    /// <summary>Who has been in a class, in the order of their enrolment and then of their ids.</summary>
    public static IReadOnlyList<Enrolment> Of(RecordSession session, RecordedClass named)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        return session.Query(Enrolled + "WHERE class.id = $1 ORDER BY since, student.id", Enrolment, named.Id);
    }

    /// <summary>Which classes a student has been in, the earliest first.</summary>
    public static IReadOnlyList<Enrolment> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(Enrolled + "WHERE student.id = $1 ORDER BY since, class.name", Enrolment, student);
    }

    /// <summary>Puts students of a class on record, and enrols those who are not in it.</summary>
    /// <remarks>
    /// An id is one person's throughout the record. Who is in the class already may have changed their name; somebody of that id elsewhere
    /// must have the same name.
    /// </remarks>
    /// <param name="session">Writes.</param>
    /// <param name="named">The class.</param>
    /// <param name="students">Who.</param>
    /// <param name="since">From which day on those are in it who are not yet.</param>
    /// <param name="comeBack">False where it is earlier work that names them: who left the class since does not come back by it.</param>
    /// <returns>Those whose id is somebody else's: nothing is written of them.</returns>
    public static IReadOnlyList<OtherOfThatId> Enrol(
        WritingSession session,
        RecordedClass named,
        IReadOnlyList<Student> students,
        DateOnly since,
        bool comeBack = true
    )
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        ArgumentNullException.ThrowIfNull(students);
        List<OtherOfThatId> others = [];
        foreach (var student in students)
        {
            var known = FindStudent(session, student.Id);
            var isHere = session.Number("SELECT count(*) FROM enrolment WHERE class = $1 AND student = $2", named.Id, student.Id) > 0;
            if (known is not null && !isHere && known.Name != student.Name)
            {
                others.Add(new(student, known));
                continue;
            }
            Put(session, student, known);
            if (
                (comeBack || !isHere)
                && session.Number(
                    "SELECT count(*) FROM enrolment WHERE class = $1 AND student = $2 AND until IS NULL",
                    named.Id,
                    student.Id
                ) == 0
            )
                session.Run(
                    "INSERT INTO enrolment (class, student, since) VALUES ($1, $2, $3) ON CONFLICT DO UPDATE SET until = NULL",
                    named.Id,
                    student.Id,
                    since
                );
        }
        return others;
    }

    /// <summary>Ends a student's enrolment in a class.</summary>
    /// <returns>False if the student is not in it.</returns>
    public static bool Leave(WritingSession session, RecordedClass named, string student, DateOnly until)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        return session.Run(
                "UPDATE enrolment SET until = $3 WHERE class = $1 AND student = $2 AND until IS NULL AND since <= $3",
                named.Id,
                student,
                until
            ) > 0;
    }

    private static void Put(WritingSession session, Student student, Student? known)
    {
        if (known is null)
            session.Run(
                "INSERT INTO student (id, name, email) VALUES ($1, $2, $3)",
                student.Id,
                student.Name,
                Values.OrNull(student.Email)
            );
        else
            session.Run(
                "UPDATE student SET name = $2, email = coalesce($3, email) WHERE id = $1",
                student.Id,
                student.Name,
                Values.OrNull(student.Email)
            );
    }

    private static RecordedClass Class(Row row) => new(row.Number(0), row.Text(1));

    private static Student Student(Row row, int at) => new(row.Text(at), row.Text(at + 1), row.TextOrNull(at + 2));

    private static Enrolment Enrolment(Row row) => new(Class(row), Student(row, 2), row.Day(5), row.DayOrNull(6));
}
