using ClassKit.Content.Diagnostics;
using ClassKit.Content.Forms;
using ClassKit.Content.Sources;
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
        return IsPageFile(source) || source.Path.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase) || source.Path.EndsWith(".ods", StringComparison.OrdinalIgnoreCase);
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
        var fields = IsPageFile(source) ? Page(source, form, problems) : Book(source, form, problems);
        if (fields is null) return problems.Fail<BenchSheet>();
        var filled = BenchFilling.Of(form, fields, Path.GetFileNameWithoutExtension(source.Path));
        foreach (var gap in filled.Gaps) Say(gap, form, problems.Doubt);
        return problems.Finish(() => filled.Sheet);
    }

    private static bool IsPageFile(Source source) => source.Path.EndsWith(".json", StringComparison.OrdinalIgnoreCase);

    private static IReadOnlyDictionary<string, string>? Page(Source source, BenchForm form, ProblemList problems)
    {
        var file = FormFileReader.Read(source, form.IsOf, $"{form.Rubric} – {form.Cohort}");
        foreach (var problem in file.Problems) problems.Add(problem.Line, problem.Found, problem.Expected);
        return file.Model?.Fields;
    }

    private static IReadOnlyDictionary<string, string>? Book(Source source, BenchForm form, ProblemList problems)
    {
        if (SourceFile.Bytes(source, problems) is not { } bytes) return null;
        var book = BenchMarksReader.Read(bytes, form);
        if (book.Refusal is { } refusal) problems.Add(null, RefusalWords.Of(refusal).TrimEnd('.'), "Bring the workbook of bench marks back.");
        else if (book.Identity is null) problems.Add(null, "It has no table of bench marks", "Bring the workbook of bench marks back, with its columns Id and Team.");
        else if (!form.IsOf(book.Identity, null)) problems.Add(null, "It is of another class, another class list or another sheet of criteria", $"Here {form.Rubric} – {form.Cohort} is read, with {form.Teams} teams. If class list, teams or criteria were changed since, put them back as they were to read this workbook.");
        else
        {
            foreach (var stranger in book.Strangers) problems.Add(null, $"Nobody on the roster has the id `{stranger}`", "Take the row away, or give it the student's own id.");
            return book.Fields;
        }
        return null;
    }

    /// <summary>Whoever is not marked through is asked about; what is complete counts all the same.</summary>
    private static void Say(BenchGap gap, BenchForm form, Action<int?, string, string, Weight> say)
    {
        switch (gap)
        {
            case BenchGap.NoLevel(var student, var criteria):
                say(null, $"{student.Shown} has no level in {string.Join(", ", criteria)}", "Choose one for the team or for the student; where somebody was not there, put `away` under the team and no level anywhere. Nothing of this work counts for them until then.", Weight.Doubtful);
                break;
            case BenchGap.UnknownLevel(var field, var found):
                say(null, $"`{found}` is no level ({field})", $"The levels are {string.Join(", ", form.Scale.LevelNames)}. Whoever it is meant for has no mark until then.", Weight.Doubtful);
                break;
            case BenchGap.NoTeam(var student, var found, var teams):
                say(null, $"{student.Shown} is in a team `{found}`", $"The teams go from 1 to {teams}; write `{BenchForm.Away}` for somebody who was not there.", Weight.Doubtful);
                break;
        }
    }
}
