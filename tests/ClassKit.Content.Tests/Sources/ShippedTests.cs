using ClassKit.Content.Banks;
using ClassKit.Content.Checking;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Tests.Sources;

/// <summary>What ships is read out of the program as out of the checkout that it was built from.</summary>
public class ShippedTests
{
    private static readonly string[] Folders = ["lessons", "rubrics", "demo-cohort"];

    /// <summary>What a new teaching folder is made of stands beside the room that reads it: nobody teaches from it as it is.</summary>
    private static readonly string Starting = Repository.PathOf("src", "ClassKit.Content", "Starting");

    [Fact]
    public void It_is_what_the_checkout_holds_byte_for_byte()
    {
        var files = Folders
            .SelectMany(folder => Directory.EnumerateFiles(Repository.PathOf(folder), "*", SearchOption.AllDirectories))
            .Select(file => (Name: Path.GetRelativePath(Repository.Root, file), File: file))
            .Concat(
                Directory
                    .EnumerateFiles(Starting, "*", SearchOption.AllDirectories)
                    .Select(file => (Name: Path.Combine("starting", Path.GetRelativePath(Starting, file)), File: file))
            )
            .ToDictionary(file => file.Name.Replace('\\', '/'), file => File.ReadAllBytes(file.File));
        Assert.Equal(files.Keys.Order(StringComparer.Ordinal), Below("").Order(StringComparer.Ordinal));
        Assert.All(files, file => Assert.Equal(file.Value, Bytes(file.Key)));
    }

    [Fact]
    public void It_is_checked_as_the_checkout_is()
    {
        var shipped = ContentChecker.Check([.. Folders.Select(folder => $"shipped:/{folder}")]);
        var checkout = ContentChecker.Check([.. Folders.Select(folder => Repository.PathOf(folder))]);
        Assert.Empty(shipped.Problems);
        Assert.Equal(
            checkout.Items.Select(item => (item.Kind, Path.GetRelativePath(Repository.Root, item.Path).Replace('\\', '/'))),
            shipped.Items.Select(item => (item.Kind, item.Path["shipped:/".Length..]))
        );
    }

    [Theory]
    [InlineData("shipped:/lessons/practice")]
    [InlineData("shipped:lessons/practice/")]
    [InlineData("shipped:/lessons/one-tin-three-lifts/../practice")]
    public void Its_bank_is_read_by_any_way_to_write_the_path(string path) =>
        Assert.Equal(
            ExerciseBank.Read(Repository.PathOf("lessons", "practice")).Model!.Exercises.Select(exercise => exercise.Id),
            ExerciseBank.Read(path).Model!.Exercises.Select(exercise => exercise.Id)
        );

    [Fact]
    public void The_bank_beside_a_lesson_that_ships_is_the_one_that_ships() =>
        Assert.NotEmpty(ExerciseBank.Beside("shipped:/lessons/one-tin-three-lifts").Model!.Exercises);

    [Fact]
    public void Who_names_it_as_in_a_checkout_is_told_how_to_name_it() =>
        Assert.Equal(
            "Name it `shipped:/lessons/practice` if you mean the one that ships.",
            Assert.Single(ExerciseBank.Read("lessons/practice").Problems).Expected
        );

    [Fact]
    public void A_lesson_on_disk_may_link_to_an_exercise_that_ships()
    {
        using var folder = new ContentFolder();
        var lesson = folder.Copy(Repository.PathOf("lessons", "one-tin-three-lifts"), "lesson");
        var text = File.ReadAllText(Path.Combine(lesson, "lesson.md"))
            .Replace("../../rubrics/", "shipped:/rubrics/", StringComparison.Ordinal);
        folder.Write(
            "lesson/lesson.md",
            text.Replace(
                "- [How wet",
                "- [A dough that waits for lunch](shipped:/lessons/practice/yeast/later_bake.md)\n- [How wet",
                StringComparison.Ordinal
            )
        );
        var read = LessonReader.Read(lesson);
        Assert.Empty(read.Problems);
        Assert.Equal("later_bake", read.Model!.Exercises[0].Id);
    }

    private static IEnumerable<string> Below(string folder) =>
        Shipped
            .Tree.Files(folder)
            .Select(name => folder + name)
            .Concat(Shipped.Tree.Folders(folder).SelectMany(name => Below(folder + name + "/")));

    private static byte[] Bytes(string path)
    {
        using var stream = Shipped.Tree.Open(path);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
