using System.Diagnostics;
using System.Reflection;
using System.Runtime.CompilerServices;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Notes;
using ClassKit.Wording.Notes;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Notes;

public class NoteWordsTests
{
    private static readonly DueMoment Due = DueWish.Parse("2026-11-20T17:00")!.In(null)!;

    public static TheoryData<Note, string> Said =>
        new()
        {
            { new Note.NotOnRecord("ada-berg"), "The record holds nothing of ada-berg." },
            {
                new Note.BytesLeft("ada-berg", StillInFile.OthersRead),
                "Somebody else reads the record: what it said of ada-berg is off it, but still in its file until nobody has it open. Close the desk and other programs that have it open."
            },
            { new Note.SameDeal("K7M-4RX9"), "The same deal as before, K7M-4RX9." },
            {
                new Note.AddedToDeal("K7M-4RX9", [Every.Ada]),
                "Added to deal K7M-4RX9: Ada Berg. The numbers and files of all others are as they were."
            },
            {
                new Note.Dealt(1, 2, 5, "dealt.json"),
                "1 workbook of 2 exercises, seed 5. Hand out only what is in workbooks, or in sheets for work on paper; keep dealt.json and the key to yourself."
            },
            {
                new Note.InParts("gradebook-01.xlsx", "gradebook-03.xlsx", 3),
                "The class is too large for one workbook or page of everybody: there are 3 of each kind, gradebook-01.xlsx to gradebook-03.xlsx and so on, with up to 125 students in the order of the class."
            },
            {
                new Note.SpreadOut(
                    new(
                        new Dictionary<string, IReadOnlyList<string>> { ["ada-berg"] = ["dough", "steam"], ["ben"] = ["dough", "yeast"] },
                        [Parts.Dough(Parts.Of()), Parts.Dough(Parts.Of()), Parts.Dough(Parts.Of())],
                        2,
                        12,
                        30,
                        34
                    )
                ),
                "2 different sets of 2 exercises, out of 3: each 12 points, about 30 to 34 minutes, and as many exercises of each skill and level."
            },
            {
                new Note.AllPointsCount(40, 12.5m),
                "The marking scheme counts at most 40 points, and a student can earn 12.5: all of them count."
            },
            {
                new Note.Graded(24, 20, 3, 1, 1, 2),
                "20 of 24 students graded, 3 missing, 1 unreadable; 1 other file accounted for, 2 left behind by programs ignored."
            },
            { new Note.DueAsBefore(Due, AsDealt: false), "Due 2026-11-20 17:00 (UTC), as on record." },
            {
                new Note.DueChanged(Due, null, AsDealt: true),
                "As dealt it was due 2026-11-20 17:00 (UTC); from now on it may come at any time."
            },
            {
                new Note.OtherJudge(3, 2),
                "The grades on record were judged by version 3 of the judge; this is version 2. Where an outcome changes without another reason, that is why."
            },
            { new Note.Changes(1), "One student changes:" },
            {
                new Note.KeptAside("grades.csv", "grades (changed by you).csv"),
                "You had changed grades.csv: your version is kept as grades (changed by you).csv."
            },
            {
                new Note.RosterUnderstood(
                    new([new("Surname", RosterField.LastName), new("First", RosterField.FirstName)], ["Team"], RosterIds.Name)
                    {
                        GuessedLetters = true,
                        HiddenRows = 1,
                    }
                ),
                "Of the roster, “Surname” was taken for the last name and “First” for the first name. Left aside: “Team”. Students are told apart by their names. If two share one, or results go back to the school's records, add a column with the school's own numbers. 1 row is hidden in the workbook, and left out. Its letters were taken for Windows-1252: look whether accented ones are right, and save it as UTF-8 if not."
            },
            {
                new Note.Expected(11.24, 14, 16, 2.5, OfTheClass: true),
                "The class can be expected to earn 11.2 to 14 of 16 points on average, by what it did before. Of 2.5 points more nobody can say: they were not asked before."
            },
            {
                new Note.LeftTheClass("Percentages", [Every.Ada]),
                "Ada Berg has grades of Percentages and is no longer on the class list: these grades are left out of the term."
            },
            {
                new Note.NotMarkedThrough("Bench day one", [Every.Ada]),
                "Bench day one is not marked in every criterion for Ada Berg: it does not count for them until it is."
            },
            {
                new Note.MarkedAndExcused("Bench day one", [Every.Ada]),
                "Bench day one: Ada Berg has a mark and is excused as well. The excuse counts, and the mark does not; where it is to count, take the word away."
            },
            {
                new Note.CameBackEmpty([Every.Ada], "corrections.csv"),
                "A workbook came back with nothing in it, from Ada Berg. No term counts it until you say so: where it is handed in like that, give one answer 0 points in corrections.csv, with your reason."
            },
            {
                new Note.EmptyLeftOut("Percentages", [Every.Ada, Every.Ada]),
                "Percentages: the workbooks of Ada Berg and Ada Berg came back empty, and nobody has said whether they are handed in: no mark yet, and the grade may still change."
            },
            {
                new Note.MarksTakenOff(1),
                "1 mark went off the record, since the files have it no longer. What it said stays among the changes of each student."
            },
            {
                new Note.MarksWithoutFile(["Loaf", "Oral"]),
                "Loaf and Oral: marks are on record and none in the files. They stay and count; put the table back, or write a mark or a word for everybody."
            },
            {
                new Note.EnrolmentEnded("Bakers 1", [Every.Ada]),
                "Ada Berg is no longer on the list of Bakers 1: on record, too, that is so from today on."
            },
            { new Note.Weighed(1, 24), "1 of 24 students has a grade." },
            {
                new Note.Provisional(5),
                "5 grades may still change: marks are to come, or answers are to be decided on. Each student's page says what is needed."
            },
            { new Note.HeldBack(9), "9 students are held back by something that must be passed." },
            { new Note.OfStep(TourStep.SecondSet), "The second set, graded:" },
        };

    [Theory]
    [MemberData(nameof(Said))]
    public void A_note_is_said_with_its_numbers_students_and_files(Note note, string words) => Assert.Contains(words, NoteWords.Of(note));

    [Fact]
    public void Files_that_name_an_erased_student_are_said_by_what_becomes_of_them()
    {
        Assert.Equal(
            ["1 file of the folder named the student:", "  1 file of the student’s alone was deleted: returned/ada-berg.xlsx"],
            NoteWords.Of(new Note.StillNamed([new StudentTrace.Theirs("returned/ada-berg.xlsx")], TraceFate.Gone))
        );
        Assert.Equal(
            [
                "5 files of the folder name the student and are as they were. If you ask to have the student taken out of them:",
                "  The student’s own rows would be taken out of 2 tables, and nothing else of them touched: roster.csv, corrections.csv (2 rows)",
                "  1 file made of the whole class would be made anew without the student: dealt.json",
                "  1 file made of the whole class names the student until it is made again or deleted: term.xlsx (made by `weigh`)",
                "  1 file of yours names the student in other places and stays for you to change: notes.md (lines 3, 7)",
            ],
            NoteWords.Of(
                new Note.StillNamed(
                    [
                        new StudentTrace.Rows("roster.csv", 1),
                        new StudentTrace.Rows("corrections.csv", 2),
                        new StudentTrace.Anew("dealt.json"),
                        new StudentTrace.MadeOfAll("term.xlsx", "weigh"),
                        new StudentTrace.Stays("notes.md", [3, 7]),
                    ],
                    TraceFate.Untouched
                )
            )
        );
    }

    [Fact]
    public void Of_what_stays_it_is_said_what_to_do_there()
    {
        Assert.Equal(
            [
                "4 files of the folder named the student:",
                "  What is the student’s alone was taken out of 1 archive, and every other file in it left as it was: all.zip (2 files, rows of 1 table)",
                "  4 files of yours name the student in other places and stay for you to change: all.zip (unpack it, change notes.txt, and pack it again), plan.xlsx (in its cells: open it and clear them), Ada.pdf (in its name: give it another, or delete it), odd.zip (it cannot be written anew: unpack it, or delete it)",
                "  2 files could not be looked into: damaged, too large, open elsewhere or behind a password. Open each and see whether it names the student: all.zip (in it: a.xlsx, b.xlsx, c.xlsx, d.xlsx, e.xlsx and 1 other), big.csv",
            ],
            NoteWords.Of(
                new Note.StillNamed(
                    [
                        new StudentTrace.Packed("all.zip", 2, 1),
                        new StudentTrace.Stays("all.zip", []) { Inside = ["notes.txt"] },
                        new StudentTrace.Stays("plan.xlsx", []) { IsInCells = true },
                        new StudentTrace.Stays("Ada.pdf", []),
                        new StudentTrace.Stays("odd.zip", []),
                        new StudentTrace.Unread("all.zip", ["a.xlsx", "b.xlsx", "c.xlsx", "d.xlsx", "e.xlsx", "f.xlsx"]),
                        new StudentTrace.Unread("big.csv", []),
                    ],
                    TraceFate.Gone
                )
            )
        );
        Assert.StartsWith(
            "  1 file could not be looked into",
            Assert.Single(NoteWords.Of(new Note.StillNamed([new StudentTrace.Unread("big.csv", [])], TraceFate.Gone))),
            StringComparison.Ordinal
        );
    }

    public static TheoryData<Type> Kinds => [.. typeof(Note).GetNestedTypes().Where(type => type.IsAssignableTo(typeof(Note)))];

    /// <summary>
    /// Asked without any of its numbers, a note that has words stumbles over what is missing; one that has none is said to have none.
    /// </summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_note_there_is_has_words(Type kind)
    {
        var note = (Note)Blank(kind);

        var found = Record.Exception(() => NoteWords.Of(note).ToList());

        Assert.IsNotType<UnreachableException>(found);
    }

    /// <summary>
    /// A fact without its numbers; where it holds a fact of a closed set, one of that set's first kind, for of none there are no words to
    /// be asked.
    /// </summary>
    private static object Blank(Type kind)
    {
        var blank = RuntimeHelpers.GetUninitializedObject(kind);
        foreach (var inner in kind.GetFields(BindingFlags.Instance | BindingFlags.NonPublic))
        {
            if (
                inner.FieldType.IsAbstract
                && inner.FieldType.GetNestedTypes().FirstOrDefault(type => type.IsAssignableTo(inner.FieldType)) is { } first
            )
            {
                inner.SetValue(blank, Blank(first));
            }
        }

        return blank;
    }

    [Fact]
    public void A_time_of_which_the_zone_was_assumed_says_how_to_name_it() =>
        Assert.Contains(
            "so UTC was taken. Write `time zone: Europe/Paris`",
            Assert.Single(NoteWords.Of(new Note.DueAsNamed(Due))),
            StringComparison.Ordinal
        );
}
