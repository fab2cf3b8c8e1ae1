using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.UseCases.Touring;

namespace ClassKit.UseCases.Tests.Checking;

/// <summary>Content is read from any tree, and each of its files once a run.</summary>
public class ReadOnceTests
{
    private static readonly DemoMaterial Demo = DemoMaterial.Find(AppContext.BaseDirectory)!;

    private static readonly string[] Shipped = ["lessons", "rubrics", "demo-cohort"];

    private readonly Watcher _watcher = new();

    [Fact]
    public void Checking_all_that_ships_opens_each_file_once()
    {
        var tree = new CountingTree(DiskTree.Instance);
        var proof = CheckContent.Run(new(new(tree), Shipped.Select(folder => Path.Combine(Demo.Root, folder))), new(_watcher));

        Assert.Empty(proof.Problems);
        Assert.DoesNotContain(proof.Doubts, doubt => doubt.Weight == Weight.Doubtful);
        Assert.True(tree.Opened.Count > 60, $"{tree.Opened.Count} files");
        Assert.DoesNotContain(tree.Opened, file => file.Value != 1);
        Assert.Equal(new(RunStep.ProvingExercises, proof.Exercises.Count, proof.Exercises.Count), _watcher.Seen[^1]);
    }

    [Fact]
    public void A_lesson_is_read_once_for_a_deal()
    {
        var tree = new CountingTree(DiskTree.Instance);
        Assert.Empty(PracticeSet.Read(new Library(tree).At(Demo.Lesson), new([], ["dough temperature"], [], null, null), 1).Problems);
        Assert.DoesNotContain(tree.Opened, file => file.Value != 1);
    }

    [Fact]
    public void Content_in_memory_is_read_as_on_disk_and_its_problems_stand_at_the_same_lines()
    {
        // The bank is left out: proving it takes as long as all else together, and it is read by the same readers.
        string[] folders = ["lessons/" + Path.GetFileName(Demo.Lesson), "rubrics", "demo-cohort"];
        var files = folders
            .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(Demo.Root, folder), "*.*", SearchOption.AllDirectories))
            .Where(file => Path.GetExtension(file) is ".md" or ".csv")
            .ToDictionary(file => Path.GetRelativePath(Demo.Root, file).Replace('\\', '/'), File.ReadAllBytes);
        var whole = CheckContent.Run(new(new(ListedTree.InMemory(files)), folders), Run.Unwatched);
        Assert.Empty(whole.Problems);
        Assert.Equal(
            CheckContent
                .Run(new(Library.OfPaths(), folders.Select(folder => Path.Combine(Demo.Root, folder))), Run.Unwatched)
                .Items.Select(item => Path.GetRelativePath(Demo.Root, item.Path)),
            whole.Items.Select(item => item.Path)
        );

        var lesson = "lessons/" + Path.GetFileName(Demo.Lesson);
        files[lesson + "/lesson.md"] = [.. files[lesson + "/lesson.md"], .. "\n## Vocabulry\n\nx\n"u8];
        var problem = Assert.Single(CheckContent.Run(new(new(ListedTree.InMemory(files)), [lesson]), Run.Unwatched).Problems, one =>
            one.Found.Contains("Vocabulry", StringComparison.Ordinal)
        );
        Assert.Equal(
            (
                lesson + "/lesson.md",
                System.Text.Encoding.UTF8.GetString(files[lesson + "/lesson.md"]).Split('\n').ToList().IndexOf("## Vocabulry") + 1
            ),
            (problem.File, problem.Line)
        );
    }

    [Fact]
    public void Checking_stops_between_two_exercises()
    {
        using var stop = new CancellationTokenSource();
        var watcher = new Watcher(progress =>
        {
            if (progress is { Step: RunStep.ProvingExercises, Done: 1 })
                stop.Cancel();
        });
        Assert.Throws<OperationCanceledException>(() => CheckContent.Run(new(Library.OfPaths(), [Demo.Lesson]), new(watcher, stop.Token)));
        Assert.Equal(1, watcher.Seen[^1].Done);
    }
}
