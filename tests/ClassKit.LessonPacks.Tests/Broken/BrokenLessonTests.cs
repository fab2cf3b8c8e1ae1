using System.Globalization;
using System.Text;
using ClassKit.Content.Lessons;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Broken;

/// <summary>What an author gets to read, and that nothing is made of a lesson that is not whole.</summary>
public sealed class BrokenLessonTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("classkit-broken-");

    public BrokenLessonTests()
    {
        Copy("lessons/thin-air-quick-breads");
        Copy("lessons/practice");
        Copy("rubrics");
    }

    private string LessonFolder => Path.Combine(_folder.FullName, "lessons", "thin-air-quick-breads");

    public static TheoryData<int> Places => [.. Enumerable.Range(0, BrokenLessons.All.Count)];

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory, MemberData(nameof(Places))]
    public void A_broken_lesson_is_explained_with_its_line_and_nothing_is_made(int place)
    {
        var broken = BrokenLessons.All[place];
        var path = Path.Combine(LessonFolder, broken.File);
        var sound = File.ReadAllText(path).ReplaceLineEndings("\n");
        Assert.Contains(broken.Find, sound, StringComparison.Ordinal);
        var at = sound.IndexOf(broken.Find, StringComparison.Ordinal);
        var text = sound[..at] + broken.Put + sound[(at + broken.Find.Length)..];
        File.WriteAllText(path, text);

        var produced = PackCommand.Make(LessonFolder, null);

        Assert.Empty(produced.Files);
        var told = produced
            .Problems.Where(problem =>
                problem.Found.Contains(broken.Says, StringComparison.OrdinalIgnoreCase)
                && problem.File.EndsWith(broken.Blamed ?? broken.File, StringComparison.Ordinal)
            )
            .ToList();
        Assert.True(told.Count > 0, $"{broken}\n{string.Join('\n', produced.Problems)}");
        if (LineOf(broken, text) is { } line)
            Assert.True(told.Any(problem => problem.Line == line), $"{broken}, line {line}\n{string.Join('\n', produced.Problems)}");
        Assert.All(produced.Problems, problem => Assert.True(problem.Expected.Length > 5, $"{problem}"));
        Assert.True(produced.Problems.Count <= 8, $"{broken}\n{string.Join('\n', produced.Problems)}");
    }

    [Fact]
    public void There_are_seventy_of_them_and_no_two_are_the_same()
    {
        Assert.True(BrokenLessons.All.Count >= 70, $"{BrokenLessons.All.Count}");
        Assert.Equal(BrokenLessons.All.Count, BrokenLessons.All.Distinct().Count());
    }

    [Fact]
    public void A_byte_order_mark_and_lines_that_end_as_in_Windows_change_nothing()
    {
        var usual = LessonReader.Read(LessonFolder).Model!;
        foreach (var file in Directory.EnumerateFiles(LessonFolder, "*.md", SearchOption.AllDirectories))
            File.WriteAllText(
                file,
                File.ReadAllText(file).ReplaceLineEndings("\r\n"),
                new UTF8Encoding(encoderShouldEmitUTF8Identifier: true)
            );

        var reading = LessonReader.Read(LessonFolder);
        Assert.Empty(reading.Problems);
        Assert.Equal(
            usual.Formulas.Select(formula => formula.Formula.TotalPercent),
            reading.Model!.Formulas.Select(formula => formula.Formula.TotalPercent)
        );
        Assert.Equal(usual.HandoutText.Written, reading.Model.HandoutText.Written.ReplaceLineEndings("\n"));
    }

    public static TheoryData<string, byte[], string> Unreadable =>
        new()
        {
            { "UTF-16", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("# Soda bread\n")], "UTF-16" },
            { "Latin 1", Encoding.Latin1.GetBytes("# Soda bread\n\nmix temperature 20 °C, crème\n"), "UTF-8" },
            { "zeros", [.. "# Soda"u8, 0, 0, 0, .. " bread\n"u8], "" },
            { "nothing", [], "empty" },
            { "a picture", [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13], "" },
        };

    [Theory, MemberData(nameof(Unreadable))]
    public void A_file_that_is_no_text_is_named_and_nothing_is_made(string what, byte[] bytes, string says)
    {
        File.WriteAllBytes(Path.Combine(LessonFolder, "formulas", "soda_bread.md"), bytes);

        var produced = PackCommand.Make(LessonFolder, null);

        Assert.Empty(produced.Files);
        Assert.True(
            produced.Problems.Any(problem =>
                problem.File.EndsWith("soda_bread.md", StringComparison.Ordinal)
                && $"{problem}".Contains(says, StringComparison.OrdinalIgnoreCase)
            ),
            $"{what}\n{string.Join('\n', produced.Problems)}"
        );
    }

    private static int? LineOf(Breakage broken, string text)
    {
        if (broken.At is null)
            return null;
        if (int.TryParse(broken.At, CultureInfo.InvariantCulture, out var line))
            return line;
        var at = text.IndexOf(broken.At, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{broken}: `{broken.At}` is not in the file.");
        return text[..at].Count(character => character == '\n') + 1;
    }

    private void Copy(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(_folder.FullName, Path.GetRelativePath(Repository.Root, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}
