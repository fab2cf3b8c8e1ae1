using System.IO.Compression;
using System.Text;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Input;

/// <summary>
/// Every command with hostile files of every kind in every place where it takes one, each with its share of them and all of them together
/// with every one: it ends with 0 or 1, never with an error of ours, and says which file, what is wrong and what to do.
/// </summary>
public sealed class HostileInputTests(SmallDeal deal) : IClassFixture<SmallDeal>, IDisposable
{
    private const string Hostile = "HOSTILE";
    private const string Good = "DEALT";

    private static readonly string Lesson = Checkout.Demo.Lesson;
    private static readonly string Roster = Checkout.Demo.Roster;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>
    /// Commands, with <see cref="Hostile"/> where the hostile file or folder goes and <see cref="Good"/> where a good dealt folder does.
    /// </summary>
    public static TheoryData<string> Commands =>
        [
            $"pack {Hostile} --out",
            $"pack {Lesson} --class {Hostile} --out",
            $"deal {Hostile} --roster {Roster} --out",
            $"deal {Lesson} --roster {Hostile} --out",
            $"practice {Hostile} --out",
            $"grade {Hostile} --returned {Good}/workbooks --out",
            $"grade {Good} --returned {Hostile} --out",
            $"grade {Good} --returned {Good}/workbooks --corrections {Hostile} --out",
            $"paper {Hostile} --out",
            $"grade {Good} --paper {Hostile} --out",
            $"regrade {Good} --returned {Hostile} --graded {Good}",
            $"regrade {Good} --returned {Good}/workbooks --graded {Hostile}",
            $"regrade {Good} --returned {Good}/workbooks --graded {Hostile} --keys {Hostile} --marking {Hostile}",
            $"follow-up {Hostile} --graded {Hostile} --out",
            $"follow-up {Good} --graded {Hostile} --out",
            $"grade-exchange {Good} --graded {Hostile} --class c --school s --session t --category k --assigned 2026-11-01 --due 2026-11-02 --scored 2026-11-03 --out",
            $"weigh {Hostile} --out",
            $"compare {Hostile} --class {Hostile} --roster {Hostile} --first {Hostile} --second {Hostile} --out",
            $"skills {Hostile} --out",
            $"difficulty {Lesson} --graded {Hostile} --record {Hostile} --out",
            $"observed {Lesson} --returned {Hostile} --out",
            $"bench {Hostile} --class {Hostile} --roster {Hostile} --out",
            $"item-bank {Hostile} --out",
            $"rehearse {Hostile} --students 3 --out",
            $"learn {Hostile} {Lesson}/exercises/oven_dial.md --out",
            $"learn {Hostile} {Hostile} --out",
            $"receive {Hostile} --out",
            $"hand-over {Hostile} --out",
            $"observe {Hostile} --class {Hostile} --out",
            $"enter {Hostile} --dealt {Good} --record {Hostile}",
            $"freeze {Hostile} --record {Hostile}",
            $"show ada --record {Hostile} --out",
            $"erase ada --record {Hostile} --files",
            $"read-back {Hostile} --record {Hostile}",
            $"back-up {Hostile}",
            $"write-out {Hostile} --out",
            $"term-exchange {Hostile} --school s --course c --class k --session t --begins 2026-09-01 --ends 2026-12-18 --out",
            $"check {Hostile}",
            $"inspect {Hostile}",
            $"inspect {Hostile} --json",
        ];

    [Theory]
    [MemberData(nameof(Commands))]
    public void No_hostile_input_is_an_error_of_ours(string command)
    {
        var at = 0;
        foreach (var (name, make) in Trials.Some(Inputs(), 4, Trials.Beginning(command)))
        {
            var hostile = _folder.Of($"hostile {at}");
            make(hostile);
            var arguments = command
                .Split(' ')
                .Select(word =>
                    word.Replace(Good, deal.Folder, StringComparison.Ordinal).Replace(Hostile, hostile, StringComparison.Ordinal)
                );
            var run = ClassKitRun.Of([
                .. arguments,
                .. command.EndsWith("--out", StringComparison.Ordinal) ? [_folder.Of($"out {at++}")] : Array.Empty<string>(),
            ]);

            Assert.True(run.ExitCode is 0 or 1, $"{command} with {name}: {run.ExitCode}\n{run.Output}\n{run.Problems}");
            Assert.DoesNotContain("   at ", run.Problems, StringComparison.Ordinal);
            if (run.ExitCode == 1)
                Assert.Matches(@"(?s).*\. .+", run.Problems);
            if (Directory.Exists(hostile))
                Directory.Delete(hostile, recursive: true);
            else
                File.Delete(hostile);
        }
    }

    /// <summary>Files, and folders that hold them under every name that a command looks for.</summary>
    private static IEnumerable<(string Name, Action<string> Make)> Inputs()
    {
        foreach (var (name, content) in Contents())
        {
            yield return ($"a file of {name}", path => File.WriteAllBytes(path, content));
            yield return ($"a folder of {name}", path => WriteAll(path, content));
        }

        yield return ("nothing there", _ => { });
        yield return ("an empty folder", path => Directory.CreateDirectory(path));
        yield return ("folders in place of files", path => LookedFor.ForEach(file => Directory.CreateDirectory(Path.Combine(path, file))));
        yield return ("a link to itself", path => File.CreateSymbolicLink(path, path));
        yield return ("a link to nowhere", path => File.CreateSymbolicLink(path, path + " not there"));
    }

    private static readonly List<string> LookedFor =
    [
        "dealt.json",
        "grades.json",
        "lesson.md",
        "roster.csv",
        "class.md",
        "exercises/one.md",
        "workbooks/one.xlsx",
    ];

    private static void WriteAll(string folder, byte[] content)
    {
        foreach (var path in LookedFor.Select(file => Path.Combine(folder, file)))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, content);
        }
    }

    private static IEnumerable<(string Name, byte[] Content)> Contents()
    {
        static byte[] Text(string text) => Encoding.UTF8.GetBytes(text);
        yield return ("nothing", []);
        yield return ("zeros", new byte[5_000]);
        yield return ("bytes that are no text", [0xFF, 0xC3, 0x28, 0xED, 0xA0, 0x80]);
        yield return ("UTF-16", [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("id,name\nada,Ada\n")]);
        yield return ("the beginning of an archive", Text("PK\u0003\u0004 and no more"));
        yield return ("an archive", Archive(("a.txt", "x")));
        yield return ("a workbook without parts", Archive(("[Content_Types].xml", "<Types/>"), ("xl/workbook.xml", "<workbook/>")));
        yield return ("deep JSON", Text(new string('[', 100_000)));
        yield return ("JSON of another kind", Text("[1, null, {\"students\": 5}]"));
        yield return ("JSON with nothing", Text("null"));
        yield return (
            "JSON with nulls",
            Text(
                "{\"version\":1,\"lesson\":null,\"exercises\":[null],\"students\":[null,{\"id\":null}],\"unmatched\":null,\"files\":[null]}"
            )
        );
        yield return ("JSON with huge numbers", Text("{\"version\":1e999,\"seed\":-99999999999999999999}"));
        yield return ("JSON that is cut off", Text("{\"version\": 1, \"students\": [ {\"id\": \"ada"));
        yield return ("deep quotes", Text(new string('>', 20_000) + " a"));
        yield return ("deep lists", Text(string.Concat(Enumerable.Range(0, 2_000).Select(at => new string(' ', at) + "- a\n"))));
        yield return ("deep emphasis", Text(string.Concat(Enumerable.Repeat("*a _b ", 5_000))));
        yield return ("deep brackets", Text(new string('[', 20_000) + "a" + new string(']', 20_000)));
        yield return ("deep YAML", Text("---\na: " + new string('[', 20_000) + "\n---\n# A\n"));
        yield return ("YAML that names itself", Text("---\na: &a [*a, *a]\nb: *a\n---\n# A\n"));
        yield return (
            "YAML that laughs",
            Text(
                "---\na: &a [x,x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b,*b]\nd: &d [*c,*c,*c,*c,*c,*c,*c,*c,*c,*c]\n---\n# A\n"
            )
        );
        yield return (
            "a deep formula",
            Text(
                "---\nskill: s\n---\n# A\n\n| given | unit | values |\n|---|---|---|\n| a | g | 1 to 9 |\n\nKey: `="
                    + new string('(', 50_000)
                    + "`\n"
            )
        );
        yield return ("a table of one long line", Text("id,name\n" + new string('a', 1_000_000) + ",x\n"));
        yield return ("a quote that never closes", Text("id,name\n\"ada" + string.Concat(Enumerable.Repeat("\nx,y", 10_000))));
        yield return ("marks of direction", Text("id,name\n\u202Eada\u2066,\u001B[2JAda\n"));
        yield return ("names of devices", Text("id,name\ncon,Con\nnul,Nul\n"));
    }

    private static byte[] Archive(params (string Name, string Content)[] entries)
    {
        using var bytes = new MemoryStream();
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in entries)
            {
                using var stream = archive.CreateEntry(name).Open();
                stream.Write(Encoding.UTF8.GetBytes(content));
            }
        }

        return bytes.ToArray();
    }
}
