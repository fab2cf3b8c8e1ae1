using ClassKit.Content.Forms;
using ClassKit.Exercises.Identity;
using ClassKit.Lessons.Measured;
using ClassKit.Pages.Numbers;
using ClassKit.UseCases.Intake;
using ClassKit.Wording.Files;
using ClassKit.Workbooks.Observations;

namespace ClassKit.UseCases.Observing;

/// <summary>Reads what one team brought back, or says why it cannot be used.</summary>
internal static class TeamFile
{
    public static (TeamMeasurements? Team, IReadOnlyList<string> Why) Read(ReturnedItem item, ObservationForm form)
    {
        if (Leftovers.Of(item.Path) is not null)
            return (null, []);
        if (item.Content is not { } bytes)
            return (null, [$"{item.Path}: {(item.Refusal is { } refusal ? RefusalWords.Of(refusal) : "It could not be read.")}"]);
        var (fields, why) = item.Path.EndsWith(".json", StringComparison.OrdinalIgnoreCase)
            ? Page(item.Path, bytes, form)
            : Book(item.Path, bytes, form);
        if (fields is null)
            return (null, why);
        // A class may have been renamed since, so that its files are taken; another class of the same lesson is said.
        var team = TeamMeasurements.Of(form, fields, Path.GetFileNameWithoutExtension(item.Path));
        var labels = ObservedField.All(form).ToDictionary(field => field.Name, field => field.Label);
        var unread = team.Unread.Select(one => $"{item.Path}: {labels[one.Field]}: `{one.Found}` is no number above 0.").ToList();
        return team.HasMeasured ? (team, [.. why, .. unread]) : (null, [.. unread, $"{item.Path}: nothing was measured."]);
    }

    private static (IReadOnlyDictionary<string, string>? Fields, IReadOnlyList<string> Why) Page(
        string path,
        byte[] bytes,
        ObservationForm form
    )
    {
        var file = FormFileReader.Read(path, bytes, saved => form.IsOf(saved.Identity, saved.Called), $"{form.Lesson} – {form.Cohort}");
        return !file.Succeeded ? (null, [.. file.Problems.Select(problem => problem.ToString())])
            : FormName.ClassIn(file.Model.Called, form.Lesson) is { Length: > 0 } other && other != form.Cohort
                ? (
                    file.Model.Fields,
                    [$"{path}: It says that it is of the class {other}, and was drawn all the same. Take it out if it is another class's."]
                )
            : (file.Model.Fields, []);
    }

    private static (IReadOnlyDictionary<string, string>? Fields, IReadOnlyList<string> Why) Book(
        string path,
        byte[] bytes,
        ObservationForm form
    )
    {
        var book = ObservationReader.Read(bytes, form);
        if (book.Refusal is { } refusal)
            return (null, [$"{path}: {RefusalWords.Of(refusal)}"]);
        if (book.Identity is null)
            return (
                null,
                [$"{path}: It is no workbook of observations. Bring back the one of the lesson's pack, or the file that the page saved."]
            );
        return form.IsOf(book.Identity, null)
            ? (book.Fields, [])
            : (
                null,
                [
                    $"{path}: It is of another lesson or class, or of one that was changed since. Bring back the workbook of this class's pack.",
                ]
            );
    }
}
