using System.Security.Cryptography;
using System.Text.RegularExpressions;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>
/// What is made under pseudonyms does not depend on what students are called: neither do names stand in it, nor do words that are names
/// miss.
/// </summary>
public sealed class PseudonymsTests : IDisposable
{
    /// <summary>Words that our sentences, tables and pages are made of, as first names; the surname is no word.</summary>
    private static readonly string[] Words =
    [
        "Will",
        "Rose",
        "May",
        "Grace",
        "Mark",
        "Bill",
        "Part",
        "Flour",
        "Right",
        "Formula",
        "Class",
        "Ice",
        "Dough",
        "Number",
        "Sheet",
        "Student",
        "Points",
        "Your",
        "The",
        "Workbook",
        "File",
        "Graded",
        "Cell",
        "Water",
        "Answer",
        "Given",
        "And",
        "Was",
        "Dealt",
        "Sum",
        "Round",
        "Temperature",
    ];

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private static DealtClass Deal(IReadOnlyList<string> names, string cohort = "Tuesday bakers", ulong seed = 5) =>
        Dealer
            .Deal(
                SmallClass.Dealt.Lesson,
                SmallClass.Dealt.LessonTitle,
                SmallClass.Dealt.Exercises,
                SmallClass.Dealt.Marking,
                new(
                    cohort,
                    [
                        .. names.Select(
                            (name, index) => new Student($"zq{index:00}", name, $"{name.Split(' ')[0].ToLowerInvariant()}@example.org")
                        ),
                    ]
                ),
                seed
            )
            .Class!;

    /// <summary>
    /// Everything that grading can say: wrong and unread answers with names typed in, several files, swapped ones, unreadable ones, changed
    /// givens, other deals. What is typed beside names is no word, since a typed “will” does go.
    /// </summary>
    private static Dictionary<string, byte[]> Return(DealtClass dealt)
    {
        var files = new Dictionary<string, byte[]>();
        foreach (var (index, student) in dealt.Students.Index())
        {
            var name = student.Who.Name;
            var answers = dealt.AnswersOf(student);
            var first = answers[0];
            var given = dealt.GivensOf(student)[0];
            var blank = DealtWorkbookWriter.Write(dealt, student);
            var file = (index % 8) switch
            {
                0 => SmallClass.Filled(dealt, student),
                1 => WorkbookFiller.Fill(
                    blank,
                    [new EnterText(first.Address, $"{name} yqkj"), new EnterText(answers[1].Address, $"182 {name} {name}")]
                ),
                2 => WorkbookFiller.Fill(
                    blank,
                    [new EnterNumber(given.Address, 987_654), new EnterFormula(first.Address, "LAMBDA(x,x+1)(86)")]
                ),
                3 => WorkbookFiller.Fill(
                    blank,
                    [
                        new EnterText(given.Address, $"by {name}"),
                        new EnterFormula(first.Address, $"ROUND({given.Address.Cell},0)&\" {name}\""),
                    ]
                ),
                4 => "not a workbook"u8.ToArray(),
                5 => WorkbookFiller.Fill(
                    blank,
                    [new EnterText(first.Address, $"=SUM({given.Address.Cell};1)"), new EnterNumber(answers[1].Address, 1)]
                ),
                6 => DealtWorkbookWriter.Write(dealt, dealt.Students[index - 1]),
                _ => OfAnotherClass(dealt, index),
            };
            files[$"{name}.xlsx"] = file;
            if (index % 8 == 0)
                files[$"{name} again.xlsx"] = WorkbookFiller.Fill(blank, [new EnterNumber(first.Address, 1)]);
        }
        return files;
    }

    /// <summary>A workbook that names the student in the name of its class.</summary>
    private static byte[] OfAnotherClass(DealtClass dealt, int index)
    {
        var other = Deal([.. dealt.Students.Select(student => student.Who.Name)], $"Kitchen of {dealt.Students[index].Who.Name}", 6);
        return DealtWorkbookWriter.Write(other, other.Students[index]);
    }

    private Dictionary<string, string> Reports(string folder, IReadOnlyList<string> names)
    {
        var dealt = Deal(names);
        File.WriteAllText(
            Path.Combine(Directory.CreateDirectory(_folder.Of(folder, "dealt")).FullName, DealtJson.FileName),
            DealtJson.Write(dealt)
        );
        Directory.CreateDirectory(_folder.Of(folder, "returned"));
        foreach (var (file, content) in Return(dealt))
        {
            // Of two versions that earn as much the newer counts, so the file system's clock must not have a say.
            File.WriteAllBytes(_folder.Of(folder, "returned", file), content);
            File.SetLastWriteTimeUtc(_folder.Of(folder, "returned", file), new(2026, 3, 2, 9, 0, 0, DateTimeKind.Utc));
        }
        var request = new GradePaths(_folder.Of(folder, "dealt"), _folder.Of(folder, "returned")).Read();
        Assert.Empty(request.Problems);
        var (reports, _) = GradeClass.Run(request.Model!, Run.Unwatched).UnderPseudonyms(new(new byte[32]));
        return GradeFiles
            .Of(reports)
            .ToDictionary(
                file => file.Path,
                file =>
                {
                    // The code of the other class's deal follows from the name of that class, which names a student here.
                    return Regex.Replace(
                        file.Path.EndsWith(".xlsx", StringComparison.Ordinal)
                            ? string.Join(
                                '\n',
                                ReturnedWorkbookReader
                                    .Read(file.Content, ReadLimits.Default)
                                    .Workbook!.Sheets.SelectMany(sheet => sheet.Cells.OrderBy(cell => cell.Key))
                                    .Select(cell => $"{cell.Value.Formula} {cell.Value.Stored}")
                            )
                            : System.Text.Encoding.UTF8.GetString(file.Content),
                        "[0-9A-Z]{3}-[0-9A-Z]{4}",
                        "code"
                    );
                }
            );
    }

    /// <summary>A name that is no word and near no other one: file names are matched with some room for slips.</summary>
    private static string Unheard(int index) =>
        $"Z{(char)('a' + index / 26)}{(char)('a' + index % 26)}"
        + string.Concat(SHA256.HashData(BitConverter.GetBytes(index)).Take(6).Select(one => "bcdfghjkqvwxz"[one % 13]));

    [Fact]
    public void Every_output_is_the_same_whatever_students_are_called()
    {
        // The second class has names of letters that make no word; both sort alike, since files are told in the order of their paths.
        var words = Words.Order(StringComparer.Ordinal).ToList();
        var named = Reports("words", [.. words.Select(word => $"{word} Qwxzv")]);
        var other = Reports("none", [.. words.Select((_, index) => $"{Unheard(index)} Qwxzv")]);

        Assert.Equal(other.Keys.Order(StringComparer.Ordinal), named.Keys.Order(StringComparer.Ordinal));
        foreach (var (path, text) in named)
        {
            Assert.Equal(other[path], text);
            Assert.DoesNotContain("Qwxzv", text, StringComparison.OrdinalIgnoreCase);
            Assert.All(words.Index(), word => Assert.DoesNotContain(Unheard(word.Index), other[path], StringComparison.OrdinalIgnoreCase));
            Assert.DoesNotContain("zq0", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("@example", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Mention {", text, StringComparison.Ordinal); // A piece that became words before its time.
        }
    }
}
