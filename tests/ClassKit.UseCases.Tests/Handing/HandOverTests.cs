using System.IO.Compression;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Handing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Checking.FirstDay;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Handing;

/// <summary>A lesson handed over and received, in memory.</summary>
public class HandOverTests
{
    private const string Lesson = "lessons/milk-scones";

    private static readonly string[] Belonging =
    [
        "ingredients.csv",
        Lesson + "/exercises/flour_for_the_class.md",
        Lesson + "/exercises/how_wet.md",
        Lesson + "/formulas/milk_scones.md",
        Lesson + "/lesson.md",
        Lesson + "/scone.png",
        "rubrics/bench.md",
        "rubrics/marks.md",
    ];

    private static readonly TeachingFolder Folder = new TeachingFolder()
        .Change(TeachingFolder.Lesson, "### What this is about\n", "### What this is about\n\n![A scone](scone.png)\n")
        .Put(Lesson + "/scone.png", Pixels.Png(40, 30))
        .Put(Lesson + "/notes.txt", "Ada was late.")
        .Put("returned/ada-example.xlsx", "PK");

    private static readonly HandedOver Bundle = Made(Folder.Library);

    [Fact]
    public void It_takes_what_the_lesson_leads_to_and_never_who_is_in_the_class()
    {
        Assert.Equal(Belonging, Bundle.Taken);
        Assert.Equal(["README.md", "class.md", Lesson + "/notes.txt", "prices.md", "roster.csv"], Bundle.LeftOut);
        using var zip = new ZipArchive(new MemoryStream(Bundle.Bytes));
        Assert.Equal(["README.md", .. Belonging], zip.Entries.Select(entry => entry.FullName));
        Assert.DoesNotContain("Ada", System.Text.Encoding.Latin1.GetString(Bundle.Bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void Prices_go_along_when_they_are_asked_for() =>
        Assert.Contains(
            "prices.md",
            HandOverLesson.Run(new(Folder.Library.At(Lesson), Folder.Library.At("prices.md")), Run.Unwatched).Model!.Taken
        );

    [Fact]
    public void The_same_lesson_makes_the_same_bytes() => Assert.Equal(Bundle.Bytes, Made(Folder.Library).Bytes);

    [Fact]
    public void What_is_received_is_what_was_handed_over_and_is_sound()
    {
        var received = Receive(Bundle.Bytes);

        Assert.Equal(["README.md", .. Belonging], received.Files.Select(file => file.Path).Order(StringComparer.Ordinal));
        Assert.Empty(received.NotBrought);
        Assert.Empty(received.Check.Problems.Concat(received.Check.Doubts));
        // And can be handed on: the same file again.
        Assert.Equal(
            Bundle.Bytes,
            Made(new(ListedTree.InMemory(received.Files.Select(file => KeyValuePair.Create(file.Path, file.Content))))).Bytes
        );
    }

    [Theory]
    [InlineData("../lesson.md")]
    [InlineData("lessons/../../x.md")]
    [InlineData("/etc/x.md")]
    [InlineData("C:/x.md")]
    [InlineData("lessons\\x.md")]
    [InlineData(".classkit-files")]
    [InlineData("lessons/.hidden/x.md")]
    [InlineData("lessons/con.md")]
    [InlineData("lessons/run.exe")]
    [InlineData("roster.csv")]
    [InlineData("LESSONS/milk-scones/LESSON.md")]
    public void A_name_that_leads_elsewhere_or_is_no_lessons_stays_in_the_bundle(string name)
    {
        using var zip = new ZipArchive(new MemoryStream(Bundle.Bytes));
        var entries = zip.Entries.Select(entry => (entry.FullName, Bytes(entry))).Append((name, "# x\n"u8.ToArray()));

        var received = Receive(Zip.Of(entries));

        Assert.Single(received.NotBrought);
        Assert.Equal(["README.md", .. Belonging], received.Files.Select(file => file.Path).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_is_no_bundle_or_unpacks_beyond_measure_is_refused_with_its_reason()
    {
        Assert.Contains("no zip that can be opened", Refused("# A lesson"u8.ToArray()), StringComparison.Ordinal);
        Assert.Contains(
            "Nothing in it belongs to a lesson",
            Refused(Zip.Of(("roster.csv", "id,name\n"u8.ToArray()))),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Nothing in it belongs to a lesson",
            Refused(Zip.Encrypted(("lesson.md", "# x"u8.ToArray()))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_lesson_that_cannot_be_read_is_not_handed_over()
    {
        var broken = new TeachingFolder().Remove("rubrics/marks.md").Library;

        Assert.Contains(
            "There is no file",
            Assert.Single(HandOverLesson.Run(new(broken.At(Lesson)), Run.Unwatched).Problems).Found,
            StringComparison.Ordinal
        );
    }

    private static HandedOver Made(Library library) => HandOverLesson.Run(new(library.At(Lesson)), Run.Unwatched).Model!;

    private static Received Receive(byte[] bytes) =>
        ReceiveLesson.Run(new(new("milk-scones.zip", () => new MemoryStream(bytes))), Run.Unwatched).Model!;

    private static string Refused(byte[] bytes) =>
        Assert.Single(ReceiveLesson.Run(new(new("x.zip", () => new MemoryStream(bytes))), Run.Unwatched).Problems).Found;

    private static byte[] Bytes(ZipArchiveEntry entry)
    {
        using var stream = entry.Open();
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
