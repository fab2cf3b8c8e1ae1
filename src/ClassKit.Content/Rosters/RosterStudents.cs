using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Cohorts;
using ClassKit.Wording.Cohorts;

namespace ClassKit.Content.Rosters;

/// <summary>The students whom the lines of a roster name.</summary>
internal static class RosterStudents
{
    public static (IReadOnlyList<Student> Students, IReadOnlyDictionary<string, Arrangement> Arrangements, RosterIds Ids) Of(
        RosterHead head,
        IReadOnlyList<CsvRecord> lines,
        ProblemList problems
    )
    {
        var ids =
            head.Places.ContainsKey(RosterField.Id) ? RosterIds.Column
            : head.Places.ContainsKey(RosterField.Email) && lines.Count(line => HasAddress(head, line)) * 2 > lines.Count ? RosterIds.Email
            : RosterIds.Name;
        var students = new List<Student>();
        var arrangements = new Dictionary<string, Arrangement>(StringComparer.Ordinal);
        var seen = new Dictionary<string, (int Line, string Id, string Of)>(StringComparer.OrdinalIgnoreCase);
        var byAddress = ids == RosterIds.Name ? NamesakesByAddress(head, lines) : [];
        foreach (var line in lines)
        {
            var (name, email) = (Name(head, line), head.Field(line, RosterField.Email));
            var id = ids switch
            {
                RosterIds.Column => head.Field(line, RosterField.Id),
                RosterIds.Email when HasAddress(head, line) => StudentId.Of(email.Split('@')[0]),
                _ when byAddress.Contains(StudentId.Of(name)) => StudentId.Of(email.Split('@')[0]),
                _ => StudentId.Of(name),
            };
            if (name.Length == 0)
                problems.Add(
                    line.Line,
                    ids == RosterIds.Column && id.Length > 0
                        ? $"The student `{id}` has no name"
                        : $"The line names nobody: it holds `{RosterFoot.Text(line)}`",
                    "Write the name as the student writes it, or take the line out if it is nobody's."
                );
            else if (StudentId.Fault(id) is { } fault)
                problems.Add(line.Line, id.Length == 0 ? "The student has no id" : $"The id is `{id}`", StudentIdWords.Of(fault));
            else if (!seen.TryAdd(id, (line.Line, id, Made(ids, name, email))))
                problems.Add(
                    line.Line,
                    Twice(id, Made(ids, name, email), seen[id], ids),
                    ids switch
                    {
                        RosterIds.Column => "Give every student an id of their own.",
                        RosterIds.Email => "Add a column `id` that tells them apart, or take out the line that is there twice.",
                        RosterIds.Name =>
                            "If they are two, write what tells them apart behind the names (`Ana Lima B`), give both an address in a column `email`, or add a column `id`; if they are one, take one of the lines out.",
                    }
                );
            students.Add(
                new(id, name, email.Length > 0 ? email : null)
                {
                    Team = ClassTeam.NameIn(head.Field(line, RosterField.Team)),
                    Formerly = head.Field(line, RosterField.Formerly) is { Length: > 0 } formerly ? formerly : null,
                }
            );
            if (ArrangementCells.Of(head, line, problems) is var arrangement && !arrangement.IsNone)
                arrangements.TryAdd(id, arrangement);
        }
        if (ids == RosterIds.Email)
            NoteNoAddress(head, lines, students, problems);
        NoteSame(head, lines, students, problems);
        NoteTeamless(lines, students, problems);
        return (students, arrangements, ids);
    }

    private static bool HasAddress(RosterHead head, CsvRecord line) =>
        head.Field(line, RosterField.Email).Contains('@', StringComparison.Ordinal);

    /// <summary>
    /// Where most have an address, a newcomer without one is called by their name, and the others keep their ids: what was dealt, typed and
    /// graded before goes by these.
    /// </summary>
    private static void NoteNoAddress(
        RosterHead head,
        IReadOnlyList<CsvRecord> lines,
        IReadOnlyList<Student> students,
        ProblemList problems
    )
    {
        foreach (var (line, student) in lines.Zip(students).Where(row => row.Second.Name.Length > 0 && !HasAddress(head, row.First)))
            problems.Doubt(
                line.Line,
                $"`{student.Name}` has no e-mail address, and most others have: until there is one, `{student.Id}`, made of the name, tells them apart",
                "Write the address before anything is dealt to them, or add a column `id`: with another id what was dealt would be nobody's."
            );
    }

    /// <summary>
    /// Names that several bear, by the ids made of them, where each of these has an address of their own. All of them are then called by it:
    /// an id that came of the order of the lines would go to the other one when the list is sorted anew.
    /// </summary>
    private static HashSet<string> NamesakesByAddress(RosterHead head, IReadOnlyList<CsvRecord> lines)
    {
        var called = lines.GroupBy(line => StudentId.Of(Name(head, line)), StringComparer.OrdinalIgnoreCase).ToList();
        var alone = called.Where(name => !name.Skip(1).Any()).Select(name => name.Key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return
        [
            .. called
                .Where(name =>
                {
                    var own = name.Select(line => head.Field(line, RosterField.Email)).ToList();
                    var ids = own.Select(address => StudentId.Of(address.Split('@')[0])).ToList();
                    return name.Key.Length > 0
                        && own.Count > 1
                        && own.All(address => address.Contains('@', StringComparison.Ordinal))
                        && ids.Distinct(StringComparer.OrdinalIgnoreCase).Count() == ids.Count
                        && !ids.Any(alone.Contains);
                })
                .Select(name => name.Key),
        ];
    }

    /// <summary>Whoever is there under two ids would be dealt and graded twice.</summary>
    private static void NoteSame(RosterHead head, IReadOnlyList<CsvRecord> lines, IReadOnlyList<Student> students, ProblemList problems)
    {
        foreach (
            var same in lines
                .Zip(students)
                .Where(row => row.Second.Email is not null)
                .GroupBy(row => row.Second.Email!, StringComparer.OrdinalIgnoreCase)
                .Where(rows => rows.Select(row => row.Second.Id).Distinct().Skip(1).Any())
        )
        {
            var (first, second) = (same.First(), same.Last());
            problems.Doubt(
                second.First.Line,
                $"`{second.Second.Id}` has the e-mail address of `{first.Second.Id}` in line {first.First.Line}",
                "Take one of the lines out if they are one student."
            );
        }
    }

    private static void NoteTeamless(IReadOnlyList<CsvRecord> lines, IReadOnlyList<Student> students, ProblemList problems)
    {
        if (
            ClassTeam.Of(students) is not { Count: > 0 } teams
            || lines.Zip(students).Where(row => row.Second.Team is null).ToList() is not { Count: > 0 } without
        )
            return;
        problems.Doubt(
            without[0].First.Line,
            $"{(without.Count == 1 ? $"`{without[0].Second.Id}` is" : $"{without.Count} students are")} in no team, and the list has teams {string.Join(", ", teams.Select(team => $"`{team.Name}`"))}",
            "Write the team into the line, or nobody's team at all."
        );
    }

    private static string Name(RosterHead head, CsvRecord line) =>
        head.Places.ContainsKey(RosterField.Name)
            ? head.Field(line, RosterField.Name)
            : InOrder(head.Field(line, RosterField.FirstName), head.Field(line, RosterField.LastName));

    /// <summary>
    /// Names written in Chinese, Japanese or Korean letters have the family's first, as whoever bears them writes them (Unicode CLDR,
    /// personNames: `zh`, `ja`, `ko` are surname first).
    /// </summary>
    private static string InOrder(string first, string last) =>
        IsEastAsian(first) && IsEastAsian(last) ? $"{last} {first}" : $"{first} {last}".Trim();

    /// <summary>True of a name in Han, Kana or Hangul alone (blocks of the Unicode Standard).</summary>
    private static bool IsEastAsian(string name) =>
        name.Length > 0
        && name.EnumerateRunes()
            .All(rune =>
                rune.Value
                    is (>= 0x1100 and <= 0x11FF)
                        or (>= 0x3005 and <= 0x3007)
                        or (>= 0x3040 and <= 0x30FF)
                        or (>= 0x3400 and <= 0x4DBF)
                        or (>= 0x4E00 and <= 0x9FFF)
                        or (>= 0xAC00 and <= 0xD7AF)
                        or (>= 0xF900 and <= 0xFAFF)
                        or (>= 0x20000 and <= 0x323AF)
            );

    /// <summary>What an id is made of.</summary>
    private static string Made(RosterIds ids, string name, string email) =>
        ids switch
        {
            RosterIds.Column => "",
            RosterIds.Email when email.Length > 0 => email,
            RosterIds.Email or RosterIds.Name => name,
        };

    private static string Twice(string id, string of, (int Line, string Id, string Of) first, RosterIds ids) =>
        ids != RosterIds.Column
            ? first.Of.Equals(of, StringComparison.OrdinalIgnoreCase)
                ? $"The {(ids == RosterIds.Email && of.Contains('@', StringComparison.Ordinal) ? "address" : "name")} `{of}` is in line {first.Line} already"
                : $"`{of}` cannot be told from `{first.Of}` in line {first.Line}: both would be `{id}`"
            : first.Id == id
                ? $"The id `{id}` is in line {first.Line} already"
                : $"The id `{id}` differs from `{first.Id}` in line {first.Line} only by capitals, which not every system tells apart";
}
