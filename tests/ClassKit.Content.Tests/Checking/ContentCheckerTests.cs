using ClassKit.Content.Checking;
using ClassKit.Content.Recognition;

namespace ClassKit.Content.Tests.Checking;

public sealed class ContentCheckerTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Everything_that_is_shipped_reads_without_a_problem()
    {
        var check = ContentChecker.Check([Path.Combine(Repository.Root, "lessons"), Repository.Rubrics, Repository.Demo]);

        Assert.Empty(check.Problems);
        Assert.Equal(
            [
                ContentKind.Lesson,
                ContentKind.Exercise,
                ContentKind.PracticalRubric,
                ContentKind.MarkingScheme,
                ContentKind.GradeRule,
                ContentKind.ClassProfile,
                ContentKind.PriceList,
                ContentKind.Roster,
                ContentKind.Term,
            ],
            check.Items.Select(item => item.Kind).Distinct()
        );
    }

    [Theory]
    [InlineData("exercises/steam.md", ContentKind.Exercise)]
    [InlineData("formulas/popovers.md", ContentKind.Formula)]
    [InlineData("lesson.md", ContentKind.Lesson)]
    public void A_single_file_is_recognised(string file, ContentKind kind)
    {
        var check = ContentChecker.Check([Path.Combine(Repository.Lesson, file)]);

        Assert.Empty(check.Problems);
        Assert.Equal(kind, Assert.Single(check.Items).Kind);
    }

    [Fact]
    public void A_path_named_twice_is_checked_once() =>
        Assert.Single(ContentChecker.Check([Repository.Lesson, Repository.Lesson + "/"]).Items);

    [Fact]
    public void A_broken_file_is_recognised_by_its_folder()
    {
        var file = _folder.Write("exercises/steam.md", "Nothing but words.\n");

        var check = ContentChecker.Check([_folder.Path]);

        Assert.Equal(ContentKind.Exercise, Assert.Single(check.Items).Kind);
        Assert.All(check.Problems, problem => Assert.Equal(file.Replace('\\', '/'), problem.File));
        Assert.NotEmpty(check.Problems);
    }

    [Fact]
    public void The_record_beside_a_class_list_is_no_loose_file()
    {
        _folder.Write("roster.csv", "id,name\nada,Ada Berg\n");
        foreach (var file in new[] { "record.sqlite", "record.sqlite-wal", "record-is-kept-in.txt" })
            _folder.Write(file, "");

        Assert.Empty(ContentChecker.Check([_folder.Path]).Doubts);
    }

    [Fact]
    public void Problems_of_all_paths_are_told_together()
    {
        _folder.Write("a/roster.csv", "id,name\n");
        _folder.Write("b/roster.csv", "id\nana\n");

        Assert.Equal(2, ContentChecker.Check([_folder.Path]).Problems.Count);
    }

    [Fact]
    public void Other_tables_below_a_folder_are_left_alone()
    {
        _folder.Write("roster.csv", "id,name\nana,Ana\n");
        _folder.Write("prices.csv", "flour,1.20\n");
        _folder.Write("README.md", "# Read me\n");

        var check = ContentChecker.Check([_folder.Path]);

        Assert.Empty(check.Problems);
        Assert.Equal(ContentKind.Roster, Assert.Single(check.Items).Kind);
    }

    [Fact]
    public void What_cannot_be_checked_is_said()
    {
        var notes = _folder.Write("notes.md", "# Notes\n");
        _folder.Write("lessons/one/notes.txt", "");

        Complaint.One(Assert.Single(ContentChecker.Check([notes]).Problems), null, "not clear what this file is", "`skill:`");
        Complaint.One(
            Assert.Single(ContentChecker.Check([Path.Combine(_folder.Path, "lessons")]).Problems),
            null,
            "nothing to check below",
            "Name a folder"
        );
        Complaint.One(
            Assert.Single(ContentChecker.Check([Path.Combine(_folder.Path, "lesons")]).Problems),
            null,
            "no such file or folder",
            "Did you mean lessons?"
        );
        Complaint.One(
            Assert.Single(ContentChecker.Check([Path.Combine(_folder.Path, "note.md")]).Problems),
            null,
            "no such file or folder",
            "Did you mean notes.md?"
        );
    }
}
