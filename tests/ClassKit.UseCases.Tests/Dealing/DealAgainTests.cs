using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Variants;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.UseCases.Touring;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>A deal that students may hold is made again to the byte, gets more students, and is never replaced.</summary>
public sealed class DealAgainTests : IDisposable
{
    private const string Roster = "id,name\nada-berg,Ada Berg\nben-okoye,Ben Okoye\ncleo-marin,Cleo Marín\n";
    private static readonly DealWish Wish = new(SetWish.None, false, 7);
    private static readonly DealWish Spread = new(SetWish.None with { Skills = ["dough temperature"], Minutes = 20 }, true, 7);

    private readonly TemporaryFolder _folder = new();
    private readonly string _lesson;
    private readonly string _out;

    public DealAgainTests()
    {
        var demo = DemoMaterial.Find(AppContext.BaseDirectory)!;
        _lesson = demo.Lesson;
        _out = Path.Combine(_folder.Path, "dealt");
    }

    public void Dispose() => _folder.Dispose();

    private Produced Deal(string roster, DealWish wish, string? lesson = null)
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, "class"));
        var file = Path.Combine(_folder.Path, "class", "roster.csv");
        File.WriteAllText(file, roster);
        return Produced.Of(
            new DealPaths(lesson ?? _lesson, file, wish) { Into = _out }.Read(),
            request => DealPractice.Run(request, Run.Unwatched),
            DealPaths.Write
        );
    }

    private Dictionary<string, byte[]> Write(Produced produced)
    {
        Assert.Empty(produced.Problems);
        foreach (var file in produced.Files.Select(file => (file.Path, file.Content)).ToList())
        {
            var path = Path.Combine(_out, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, file.Content);
        }
        return Directory
            .EnumerateFiles(_out, "*", SearchOption.AllDirectories)
            .ToDictionary(path => Path.GetRelativePath(_out, path).Replace('\\', '/'), File.ReadAllBytes);
    }

    public static TheoryData<bool> Spreads => [false, true];

    [Theory]
    [MemberData(nameof(Spreads))]
    public void The_same_again_is_the_same_to_the_byte(bool spread)
    {
        var first = Write(Deal(Roster, spread ? Spread : Wish));
        var again = Write(Deal(Roster, spread ? Spread : Wish));

        Assert.Equal(first.Keys.Order(StringComparer.Ordinal), again.Keys.Order(StringComparer.Ordinal));
        Assert.All(first, file => Assert.Equal(file.Value, again[file.Key]));
    }

    // Newcomers at the head, in the middle and at the end of the roster.
    [Theory]
    [MemberData(nameof(Spreads))]
    public void Students_who_come_later_change_nobody_elses_numbers_or_files(bool spread)
    {
        var wish = spread ? Spread : Wish;
        var first = Write(Deal(Roster, wish));
        var produced = Deal("id,name\naaron,Aaron\nada-berg,Ada Berg\nben-okoye,Ben Okoye\nbo,Bo\ncleo-marin,Cleo Marín\nzoe,Zoe\n", wish);
        var more = Write(produced);
        var (before, now) = (Read(first), Read(more));

        Assert.Equal(before.Identity, now.Identity);
        Assert.All(
            first.Where(file =>
                file.Key.StartsWith("workbooks/", StringComparison.Ordinal) || file.Key.StartsWith("sheets/", StringComparison.Ordinal)
            ),
            file => Assert.Equal(file.Value, more[file.Key])
        );
        Assert.Equal(
            ["sheets/aaron.html", "sheets/bo.html", "sheets/zoe.html", "workbooks/aaron.xlsx", "workbooks/bo.xlsx", "workbooks/zoe.xlsx"],
            more.Keys.Except(first.Keys).Order(StringComparer.Ordinal)
        );
        var added = Assert.Single(produced.Notes.OfType<Note.AddedToDeal>());
        Assert.Equal(
            (now.Identity!.Code, "Aaron, Bo, Zoe"),
            (added.Code, string.Join(", ", added.Students.Select(student => student.Name)))
        );
        foreach (var student in before.Students)
        {
            var same = now.Students.Single(other => other.Who.Id == student.Who.Id);
            Assert.Equal(before.GivensOf(student), now.GivensOf(same));
            Assert.Equal(before.AnswersOf(student), now.AnswersOf(same));
        }
        Assert.All(now.Exercises, exercise =>
            Assert.Distinct(
                now.Students.Where(student => student.GivensOf(exercise.Id).Count > 0)
                    .Select(student => VariantKey.Of(exercise, student.GivensOf(exercise.Id)))
            )
        );
        Assert.All(now.Students, student => Assert.NotEmpty(now.AnswersOf(student)));
    }

    public static TheoryData<string, string> Differences =>
        new()
        {
            { "seed", "the seed is 8, and was 7" },
            { "removed", "the roster lacks ben-okoye" },
            { "renamed", "ada-berg is called Ada Mountain, and was called Ada Berg" },
            { "set", "without" },
            { "spread", "sets of exercises are chosen in another way" },
            { "text", "has been changed since" },
            { "marks", "the marking scheme has changed" },
        };

    [Theory]
    [MemberData(nameof(Differences))]
    public void Another_deal_is_refused_with_what_differs_and_a_way_out(string what, string said)
    {
        var wish = what == "spread" ? Spread : Wish;
        Write(Deal(Roster, wish));

        var produced = what switch
        {
            "seed" => Deal(Roster, wish with { Seed = 8 }),
            "removed" => Deal("id,name\nada-berg,Ada Berg\ncleo-marin,Cleo Marín\n", wish),
            "renamed" => Deal(Roster.Replace("Ada Berg", "Ada Mountain", StringComparison.Ordinal), wish),
            "set" => Deal(Roster, wish with { Set = SetWish.None with { Exercises = [Read().Exercises[0].Id] } }),
            "spread" => Deal(Roster, Spread with { Set = Spread.Set with { Minutes = 21 } }),
            "text" => Deal(Roster, wish, Changed("exercises", text => text.Replace("Points: ", "Points: 1", StringComparison.Ordinal))),
            _ => Deal(Roster, wish, Changed("rubrics", text => text.Replace("40 %", "45 %", StringComparison.Ordinal))),
        };

        var problem = Assert.Single(produced.Problems);
        Assert.Equal(_out, problem.File);
        Assert.Contains(said, problem.Found, StringComparison.Ordinal);
        Assert.Contains("Name another folder", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_deal_that_cannot_be_read_is_left_alone()
    {
        Write(Deal(Roster, Wish));
        File.WriteAllText(Path.Combine(_out, DealtJson.FileName), "{");

        Assert.Contains("name another folder", Assert.Single(Deal(Roster, Wish).Problems).Expected, StringComparison.Ordinal);
    }

    private DealtClass Read() => DealtJson.Read("dealt.json", File.ReadAllText(Path.Combine(_out, DealtJson.FileName))).Model!;

    private static DealtClass Read(Dictionary<string, byte[]> files) =>
        DealtJson.Read("dealt.json", System.Text.Encoding.UTF8.GetString(files[DealtJson.FileName])).Model!;

    /// <summary>A copy of the lessons and rubrics in which the first file that a change touches is changed.</summary>
    private string Changed(string below, Func<string, string> change)
    {
        var root = DemoMaterial.Find(AppContext.BaseDirectory)!.Root;
        var copy = Path.Combine(_folder.Path, "copy");
        foreach (
            var path in new[] { "lessons", "rubrics" }
                .Select(name => Path.Combine(root, name))
                .Where(Directory.Exists)
                .SelectMany(folder => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        )
        {
            var target = Path.Combine(copy, Path.GetRelativePath(root, path));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(path, target);
        }
        var where = below == "rubrics" ? Path.Combine(copy, "rubrics") : Path.Combine(copy, "lessons", "one-tin-three-lifts", below);
        var file = Directory
            .EnumerateFiles(where, "*.md")
            .Where(path => Path.GetFileName(path) != "README.md")
            .Order(StringComparer.Ordinal)
            .First(path => change(File.ReadAllText(path)) != File.ReadAllText(path));
        File.WriteAllText(file, change(File.ReadAllText(file)));
        return Path.Combine(copy, "lessons", "one-tin-three-lifts");
    }
}
