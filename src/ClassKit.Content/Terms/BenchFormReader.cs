using ClassKit.Content.Diagnostics;
using ClassKit.Content.Forms;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Rubrics;
using ClassKit.Terms.Bench;
using ClassKit.Wording.Files;
using ClassKit.Workbooks.Bench;

namespace ClassKit.Content.Terms;

/// <summary>Reads what one marker saw from a form that was filled in: the file that its page saved, or its workbook.</summary>
public static class BenchFormReader
{
    /// <summary>True for a file that is read as a form, and not as a table.</summary>
    private static bool IsForm(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return IsPageFile(source)
            || source.Path.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase)
            || source.Path.EndsWith(".ods", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>The marks of a form that was filled in or of a table, or everything that is wrong with them.</summary>
    /// <param name="source">The file.</param>
    /// <param name="rubric">What was marked with.</param>
    /// <param name="form">The form that it must be of, if it is one.</param>
    public static Reading<BenchSheet> ReadAny(Source source, PracticalRubric rubric, BenchForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return IsForm(source) ? Read(source, form) : BenchTableReader.Read(source, rubric, form);
    }

    /// <summary>The marks, or everything that is wrong with them.</summary>
    /// <param name="source">The file.</param>
    /// <param name="form">The form that it must be of.</param>
    public static Reading<BenchSheet> Read(Source source, BenchForm form)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(form);
        var problems = new ProblemList(source.Shown);
        if ((IsPageFile(source) ? Page(source, form, problems) : Book(source, form, problems)) is not var (made, filledIn))
            return problems.Fail<BenchSheet>();
        Say(made, form, problems.Doubt);
        var fields = made == form ? filledIn : LeavingStudent.From(made, form, filledIn);
        var filled = BenchFilling.Of(form, fields, Path.GetFileNameWithoutExtension(source.Path));
        foreach (var gap in filled.Gaps)
            Say(gap, form, problems.Doubt);
        return problems.Finish(() => filled.Sheet);
    }

    private static bool IsPageFile(Source source) => source.Path.EndsWith(".json", StringComparison.OrdinalIgnoreCase);

    /// <summary>The form that the page was made of, and what was filled in.</summary>
    private static (BenchForm Made, IReadOnlyDictionary<string, string> Fields)? Page(Source source, BenchForm form, ProblemList problems)
    {
        BenchForm? made = null;
        var file = FormFileReader.Read(source, saved => (made = MadeOf(saved)) is not null, $"{form.Rubric} – {form.Cohort}");
        foreach (var problem in file.Problems)
            problems.Add(problem.Line, problem.Found, problem.Expected);
        return file.Succeeded ? (made!, file.Model.Fields) : null;

        BenchForm? MadeOf(FormFile saved)
        {
            bool IsIt(BenchForm one) => one.IsOf(saved.Identity, saved.Called);
            return IsIt(form) ? form
                : EarlierForm.IsCalledBy(form, saved.Called) ? EarlierForm.Of(form, EarlierForm.ListedIn(saved.Fields), IsIt)
                : null;
        }
    }

    private static (BenchForm Made, IReadOnlyDictionary<string, string> Fields)? Book(Source source, BenchForm form, ProblemList problems)
    {
        if (SourceFile.Bytes(source, problems) is not { } bytes)
            return null;
        var book = BenchMarksReader.Read(bytes, form);
        if (book.Refusal is { } refusal)
            problems.Add(null, RefusalWords.Of(refusal).TrimEnd('.'), "Bring the workbook of bench marks back.");
        else if (book.Identity is null)
            problems.Add(null, "It has no table of bench marks", "Bring the workbook of bench marks back, with its columns Id and Team.");
        else if (form.IsOf(book.Identity, null))
        {
            SayOthers(book.Listed, form, problems);
            foreach (var stranger in book.Strangers)
                problems.Add(null, $"Nobody on the roster has the id `{stranger}`", "Take the row away, or give it the student's own id.");
            return (form, book.Fields);
        }
        else if (IsOfSameClass(book, form) && EarlierForm.Of(form, book.Listed, one => one.IsOf(book.Identity, null)) is { } made)
        {
            SayOthers(book.Listed, form, problems);
            return (made, BenchMarksReader.Read(bytes, made).Fields);
        }
        else
            problems.Add(
                null,
                "It is of another class, another class list or another sheet of criteria",
                $"Here {form.Rubric} – {form.Cohort} is read, with {form.Teams} teams. If its criteria were changed since, or most of the class list, put them back as they were to read this workbook."
            );
        return null;
    }

    /// <summary>A row whose id is one person's and whose name is another's: a column was sorted alone, or the list was numbered anew.</summary>
    private static void SayOthers(IReadOnlyList<Student> listed, BenchForm form, ProblemList problems)
    {
        foreach (
            var (row, student) in listed
                .Where(row => row.Name.Length > 0)
                .Join(form.Students, row => row.Id, student => student.Id, (row, student) => (row, student))
                .Where(pair =>
                    !SamePerson.IsSurely(pair.row, pair.student)
                    && !SamePerson.IsSurely(pair.row, pair.student with { Name = pair.student.Shown })
                )
        )
            problems.Add(
                null,
                $"A row has the id `{row.Id}`, which is {student.Shown}’s, and the name {row.Name}",
                "Put the ids back beside their names; if the student has changed the name, write the earlier one into a column `formerly` of the class list."
            );
    }

    /// <summary>Its rows have names: ids that are bare numbers are in every class.</summary>
    private static bool IsOfSameClass(BenchBookReading book, BenchForm form) =>
        book.Listed.Count(listed =>
            form.Students.Any(student => student.Id == listed.Id && student.Shown.Equals(listed.Name, StringComparison.OrdinalIgnoreCase))
        ) * 2
        > book.Listed.Count;

    /// <summary>What a class list that changed does to the marks.</summary>
    private static void Say(BenchForm made, BenchForm form, Action<int?, string, string, Weight> say)
    {
        string? Missing(BenchForm here, BenchForm there) =>
            here
                .Students.ExceptBy(there.Students.Select(student => student.Id), student => student.Id)
                .Select(student => student.Shown)
                .ToList()
                is { Count: > 0 } names
                ? string.Join(", ", names)
                : null;
        if (Missing(made, form) is { } gone)
            say(
                null,
                $"On this form and no longer on the class list: {gone}",
                "What was marked of them is left out; everybody else has the marks that they had.",
                Weight.Noted
            );
        if (Missing(form, made) is { } came)
            say(
                null,
                $"On the class list, and not when this form was made: {came}",
                "They have no mark from it. If they were there after all, mark them in a table, or at the desk.",
                Weight.Noted
            );
    }

    /// <summary>Whoever is not marked through is asked about; what is complete counts all the same.</summary>
    private static void Say(BenchGap gap, BenchForm form, Action<int?, string, string, Weight> say)
    {
        switch (gap)
        {
            case BenchGap.NoLevel(var student, var criteria):
                say(
                    null,
                    $"{student.Shown} has no level in {string.Join(", ", criteria)}",
                    "Choose one for the team or for the student; where somebody was not there, put `away` under the team and no level anywhere. Nothing of this work counts for them until then.",
                    Weight.Doubtful
                );
                break;
            case BenchGap.UnknownLevel(var field, var found):
                say(
                    null,
                    $"`{found}` is no level ({field})",
                    $"The levels are {string.Join(", ", form.Scale.LevelNames)}. Whoever it is meant for has no mark until then.",
                    Weight.Doubtful
                );
                break;
            case BenchGap.NoTeam(var student, var found, var teams):
                say(
                    null,
                    $"{student.Shown} is in a team `{found}`",
                    $"The teams go from 1 to {teams}; write `{BenchForm.Away}` for somebody who was not there.",
                    Weight.Doubtful
                );
                break;
        }
    }
}
