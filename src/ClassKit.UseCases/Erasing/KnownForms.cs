using ClassKit.Content.Checking;
using ClassKit.Content.Classes;
using ClassKit.Content.Forms;
using ClassKit.Content.Recognition;
using ClassKit.Content.Rosters;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Rubrics;
using ClassKit.Terms.Bench;
using ClassKit.Workbooks.Bench;
using ClassKit.Workbooks.Erasing;

namespace ClassKit.UseCases.Erasing;

/// <summary>
/// Forms of bench marks that a folder's classes were or may be marked on. One is tied to the ids of its class: without a student on the
/// list, it must be without them as well, or nobody's marks could be read any more.
/// </summary>
/// <param name="Folder">The teaching folder.</param>
/// <param name="Who">The student who leaves.</param>
internal sealed record KnownForms(string Folder, Student Who)
{
    private readonly Lazy<IReadOnlyList<(BenchForm Before, BenchForm After)>> _all = new(() => All(Folder, Who));

    /// <summary>A form that was filled in, without the student; null for any other file and for forms of other classes.</summary>
    /// <param name="file">The file.</param>
    /// <param name="bytes">What is in it.</param>
    public byte[]? Without(string file, byte[] bytes) =>
        Path.GetExtension(file).ToLowerInvariant() switch
        {
            ".json" => OfPage(file, bytes),
            ".xlsx" or ".ods" => OfWorkbook(file, bytes),
            _ => null,
        };

    private byte[]? OfPage(string file, byte[] bytes)
    {
        (BenchForm Before, BenchForm After)? form = null;
        var read = FormFileReader.Read(file, bytes, saved => (form = Find(saved)) is not null, "");
        return read.Succeeded && form is var (before, after)
            ? FormFileWriter.Of(new(after.Identity, LeavingStudent.From(before, after, read.Model.Fields)), read.Model.Called ?? "")
            : null;
    }

    /// <summary>
    /// Its rows say each student's team, so that only the student's own row and the form's name change, unless a team goes with the
    /// student.
    /// </summary>
    private byte[]? OfWorkbook(string file, byte[] bytes)
    {
        if (
            _all.Value.Count == 0
            || BenchMarksReader.Read(bytes, _all.Value[0].Before).Identity is not { Length: > 0 } identity
            || Find(identity, null) is not var (before, after)
        )
            return null;
        var sought = new SoughtStudent(Who, before.Students);
        var isAsBefore = Enumerable.Range(1, before.Teams).All(team => after.TeamCalled(before.TeamName(team)) == team);
        return isAsBefore && StudentWorkbook.Read(bytes, sought) is { } book
            ? Emptied.Of(file, bytes, book.Rows(sought), (identity, after.Identity))
            : null;
    }

    /// <summary>One that was made before others left the class is still known by who stands in it.</summary>
    private (BenchForm Before, BenchForm After)? Find(FormFile saved)
    {
        if (Find(saved.Identity, saved.Called) is { } same)
            return same;
        var listed = EarlierForm.ListedIn(saved.Fields);
        if (listed.All(student => student.Id != Who.Id))
            return null;
        return _all
            .Value.Where(form => EarlierForm.IsCalledBy(form.Before, saved.Called))
            .Select(form =>
                EarlierForm.Of(form.Before, listed, one => one.IsOf(saved.Identity, saved.Called)) is { } earlier
                    ? ((BenchForm, BenchForm)?)(earlier, form.After)
                    : null
            )
            .FirstOrDefault(form => form is not null);
    }

    private (BenchForm Before, BenchForm After)? Find(string identity, string? called) =>
        _all.Value.Where(form => form.Before.IsOf(identity, called)).Select(form => ((BenchForm, BenchForm)?)form).FirstOrDefault();

    private static IReadOnlyList<(BenchForm Before, BenchForm After)> All(string folder, Student who)
    {
        var library = Library.OfPaths();
        var found = ContentChecker
            .Recognised(library.At(folder))
            .Concat(ContentChecker.Recognised(library.At(Shipped.Scheme + "/rubrics")))
            .ToLookup(item => item.Kind, item => item.Path);
        var classes = found[ContentKind.ClassProfile]
            .Select(path => ClassProfileReader.Read(library.At(path)).Model)
            .OfType<ClassProfile>()
            .ToList();
        var lists = found[ContentKind.Roster]
            .Concat(ClassLists.Named(folder))
            .Distinct()
            .Select(path => RosterReader.Read(library.At(path)).Model?.Students)
            .OfType<IReadOnlyList<Student>>()
            .Where(students => students.Any(student => student.Id == who.Id))
            .ToList();
        return
        [
            .. from path in found[ContentKind.PracticalRubric]
            let rubric = PracticalRubricReader.Read(library.At(path)).Model
            where rubric is not null
            from students in lists
            from profile in classes
            let rest = students.Where(student => student.Id != who.Id).ToList()
            select (Of(rubric, profile, students), Of(rubric, profile, rest)),
        ];
    }

    private static BenchForm Of(PracticalRubric rubric, ClassProfile profile, IReadOnlyList<Student> students) =>
        BenchForms.Of(rubric, profile.Name, Namesakes.ToldApart(students), profile.Teams);
}
