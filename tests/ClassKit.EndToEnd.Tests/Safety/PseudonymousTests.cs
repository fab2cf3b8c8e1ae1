using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using ClassKit.Content.Rosters;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Safety;

/// <summary>Reports without names have none, in any byte of any file, and are otherwise the same.</summary>
public sealed class PseudonymousTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void No_name_mail_or_id_of_any_student_is_in_any_byte_of_the_reports()
    {
        Grade();
        var students = RosterReader.Read(Checkout.Demo.Roster).Model!.Students;
        string[] wholes = [.. students.SelectMany(student => (string?[])[student.Id, student.Name, student.Email]).OfType<string>()];

        // A part of a name may stand inside another word, as Selin does in baseline.
        var parts = new Regex(
            @"\b("
                + string.Join(
                    '|',
                    students.SelectMany(student => student.Name.Split(' ', '-')).Where(word => word.Length > 3).Select(Regex.Escape)
                )
                + @")\b",
            RegexOptions.IgnoreCase
        );

        Assert.All(Directory.EnumerateFileSystemEntries(_folder.Of("plain"), "*", SearchOption.AllDirectories), path =>
            Free(Path.GetRelativePath(_folder.Of("plain"), path), path)
        );
        Assert.All(Directory.EnumerateFiles(_folder.Of("plain"), "*", SearchOption.AllDirectories), path =>
            Assert.All(Texts(path), text => Free(text, path))
        );

        void Free(string text, string path)
        {
            Assert.All(wholes, word => Assert.False(text.Contains(word, StringComparison.OrdinalIgnoreCase), $"{word} is in {path}."));
            Assert.False(parts.Match(text) is { Success: true }, $"{parts.Match(text).Value} is in {path}.");
        }
    }

    [Fact]
    public void Points_and_outcomes_are_those_of_the_reports_with_names_and_the_key_says_whose()
    {
        Grade();
        ClassKitRun.Of("grade", _folder.Of("dealt2026"), "--returned", Checkout.Demo.Returned, "--out", _folder.Of("named")).Done();
        var key = File.ReadAllLines(_folder.Of("plain-key", "pseudonyms.csv"))
            .Skip(1)
            .Select(line => line.Split(','))
            .ToDictionary(line => line[1], line => line[0]);

        var named = Points("named").ToDictionary(student => key[student.Key], student => student.Value);

        Assert.Equal(
            named.OrderBy(student => student.Key, StringComparer.Ordinal),
            Points("plain").OrderBy(student => student.Key, StringComparer.Ordinal)
        );
        Assert.Equal(24, key.Values.Distinct().Count());
    }

    [Fact]
    public void The_same_deal_gives_the_same_pseudonyms_where_its_key_lies_and_without_it_others()
    {
        var (table, secret) = (_folder.Of("plain-key", "pseudonyms.csv"), _folder.Of("plain-key", "pseudonym-secret.txt"));
        Grade();
        var first = File.ReadAllText(table);
        Grade();
        Assert.Equal(first, File.ReadAllText(table));
        Grade(seed: "2027");
        Assert.NotEqual(first, File.ReadAllText(table));

        // Another deal was graded in between, and the secret stayed.
        Grade();
        Assert.Equal(first, File.ReadAllText(table));
        Directory.Delete(_folder.Of("plain-key"), recursive: true);
        Grade();
        Assert.NotEqual(first, File.ReadAllText(table));

        File.WriteAllText(secret, "cut off");
        var refused = Again("2026");
        Assert.Equal(1, refused.ExitCode);
        Assert.Contains("It is no secret of pseudonyms", refused.Problems, StringComparison.Ordinal);
    }

    [Fact]
    public void Reports_without_names_are_never_written_among_those_with()
    {
        ClassKitRun
            .Of(
                "deal",
                Checkout.Demo.Lesson,
                "--roster",
                Checkout.Demo.Roster,
                "--out",
                _folder.Of("dealt"),
                "--seed",
                "2026",
                "--class",
                Checkout.Demo.Class
            )
            .Done();
        ClassKitRun.Of("grade", _folder.Of("dealt"), "--returned", Checkout.Demo.Returned, "--out", _folder.Of("named")).Done();

        Assert.Equal(
            1,
            ClassKitRun
                .Of("grade", _folder.Of("dealt"), "--returned", Checkout.Demo.Returned, "--out", _folder.Of("named"), "--pseudonymous")
                .ExitCode
        );
    }

    private void Grade(string seed = "2026")
    {
        var dealt = _folder.Of("dealt" + seed);
        ClassKitRun
            .Of(
                "deal",
                Checkout.Demo.Lesson,
                "--roster",
                Checkout.Demo.Roster,
                "--out",
                dealt,
                "--seed",
                seed,
                "--class",
                Checkout.Demo.Class
            )
            .Done();
        Again(seed).Done();
    }

    private ClassKitRun Again(string seed) =>
        ClassKitRun.Of(
            "grade",
            _folder.Of("dealt" + seed),
            "--returned",
            Checkout.Demo.Returned,
            "--out",
            _folder.Of("plain"),
            "--pseudonymous"
        );

    private Dictionary<string, string> Points(string folder)
    {
        using var grades = JsonDocument.Parse(File.ReadAllText(_folder.Of(folder, "grades.json")));
        return grades
            .RootElement.GetProperty("students")
            .EnumerateArray()
            .ToDictionary(
                student => student.GetProperty("id").GetString()!,
                student =>
                    $"{student.GetProperty("points")} {string.Join(',', student.GetProperty("answers").EnumerateArray().Select(answer => answer.GetProperty("outcome").GetString()))}"
            );
    }

    /// <summary>A file as text, and every part of one that is a zip archive.</summary>
    private static IEnumerable<string> Texts(string path)
    {
        yield return Encoding.UTF8.GetString(File.ReadAllBytes(path));
        if (!path.EndsWith(".xlsx", StringComparison.Ordinal))
            yield break;
        using var archive = ZipFile.OpenRead(path);
        foreach (var entry in archive.Entries)
        {
            using var reader = new StreamReader(entry.Open());
            yield return reader.ReadToEnd();
        }
    }
}
