using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Texts;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Checking;

namespace ClassKit.Desk.Kitchen;

/// <summary>What was arranged with single students, as a form: written back into their own lines of the class's list.</summary>
internal static class ArrangedScreen
{
    private const string Page = "class/{class}/arranged";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit => With(visit, (known, text, students, cells) => Show(visit, known, text, students, cells, [])));
        routes.TakeInside(Page, visit => With(visit, (known, text, students, cells) => Keep(visit, known, text, students, cells)));
        routes.TakeInside(Page + "/look", visit =>
            With(visit, (known, text, students, cells) =>
                visit.Show<LookedOver>((nameof(LookedOver.Problems), Typed(visit, known, text, students, cells).Problems))
            )
        );
    }

    /// <summary>Answers where the list is plain text in which each student has a line.</summary>
    private static Task With(Visit visit, Func<ClassEntry, OwnText, IReadOnlyList<Student>, Func<Student, string, string>, Task> answer) =>
        visit.InClass(known =>
            known.Roster is { } list
            && RosterReader.Read(list).Model is { } roster
            && OwnText.Read(list) is { } text
            && ArrangedRoster.Cells(text.Text, roster.Students) is { } cells
                ? answer(known, text, roster.Students, cells)
                : visit.Show<Frame.WordPage>(
                    (nameof(Frame.WordPage.Title), "This list is changed elsewhere"),
                    (
                        nameof(Frame.WordPage.Words),
                        "It is no plain table with a line for each student that could be written here. In the program that made it, add columns such as `large print`, `extra time` and `due`."
                    )
                )
        );

    private static Task Keep(
        Visit visit,
        ClassEntry known,
        OwnText text,
        IReadOnlyList<Student> students,
        Func<Student, string, string> cells
    )
    {
        if (visit.Typed("stamp") != text.Stamp)
            return Show(visit, known, text, students, cells, [text.Meanwhile(Differing(visit, students, cells))], isTyped: false);
        var (content, wrong, _) = Typed(visit, known, text, students, cells);
        if (wrong.Count > 0)
            return Show(visit, known, text, students, cells, wrong);
        return text.Write(visit.Typed("stamp"), content) is { } refused
            ? Show(visit, known, text, students, cells, [refused])
            : visit.GoTo($"class/{known.Key}/arranged?kept=yes");
    }

    private static IEnumerable<string> Differing(Visit visit, IReadOnlyList<Student> students, Func<Student, string, string> cells) =>
        from student in students
        from column in ArrangedRoster.Columns
        let typed = Cell(visit, student, column, cells(student, column))
        where typed != cells(student, column)
        select $"{student.Shown}, {column}: {(typed.Length > 0 ? typed : "nothing")}";

    /// <summary>The list as it would be, what is wrong with it, and all that is to be said of it.</summary>
    private static (byte[] Content, IReadOnlyList<Diagnostic> Wrong, IReadOnlyList<Diagnostic> Problems) Typed(
        Visit visit,
        ClassEntry known,
        OwnText text,
        IReadOnlyList<Student> students,
        Func<Student, string, string> cells
    )
    {
        var content = text.With(
            ArrangedRoster.With(text.Text, students, (student, column) => Cell(visit, student, column, cells(student, column)))!
        );
        var changed = new Library(new ChangedTree(PathTree.Instance.Full(known.Roster!), content));
        var read = RosterReader.Read(changed.At(known.Roster!));
        return (
            content,
            read.Succeeded ? [] : read.Problems,
            [
                .. read.Problems,
                .. read.Succeeded
                    ? Holding
                        .Broken(visit.Folder, changed)
                        .Concat(ArrangedWorks.Unknown(changed.At(known.Roster!), visit.Folder.Items(changed)))
                    : [],
            ]
        );
    }

    /// <summary>
    /// What was typed on one line; what is there already where the form says nothing of it, and where a box says what the cell says in
    /// another word.
    /// </summary>
    private static string Cell(Visit visit, Student student, string column, string before)
    {
        if (visit.Sent(ArrangedPage.Field(student, "there")) is null)
            return before;
        var typed = new string([.. visit.Typed(ArrangedPage.Field(student, column)).Where(letter => !char.IsControl(letter))]);
        return ArrangedPage.IsBox(column, before) && ArrangedPage.IsTicked(before) == typed.Length > 0 ? before : typed;
    }

    /// <summary>What is arranged for something that nothing is called, as the list is.</summary>
    private static IReadOnlyList<Diagnostic> Unknown(Visit visit, ClassEntry known)
    {
        var library = Library.OfPaths();
        return [.. ArrangedWorks.Unknown(library.At(known.Roster!), visit.Folder.Items(library)).Select(one => one with { File = "" })];
    }

    private static Task Show(
        Visit visit,
        ClassEntry known,
        OwnText text,
        IReadOnlyList<Student> students,
        Func<Student, string, string> cells,
        IReadOnlyList<Diagnostic> problems,
        bool? isTyped = null
    )
    {
        var again = isTyped ?? problems.Count > 0;
        return visit.Show<ArrangedPage>(
            (nameof(ArrangedPage.Class), known),
            (nameof(ArrangedPage.Students), students),
            (nameof(ArrangedPage.Problems), problems),
            (nameof(ArrangedPage.Stamp), again ? visit.Typed("stamp") : text.Stamp),
            (nameof(ArrangedPage.Cell), again ? (student, column) => Cell(visit, student, column, cells(student, column)) : cells),
            (nameof(ArrangedPage.IsKept), visit.Ticked("kept") && problems.Count == 0),
            (nameof(ArrangedPage.Unknown), Unknown(visit, known))
        );
    }
}
