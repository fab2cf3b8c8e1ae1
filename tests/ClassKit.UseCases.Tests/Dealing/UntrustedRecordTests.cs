using System.Text.Json.Nodes;
using ClassKit.Exercises.Deadlines;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>
/// dealt.json and grades.json with every field broken in every way end in work done or in a message with place and remedy, never in an
/// exception.
/// </summary>
public sealed class UntrustedRecordTests : IDisposable
{
    private static readonly string DealtText = DealtJson.Write(SmallClass.Dealt);
    private readonly TemporaryFolder _folder = new();

    /// <summary>No divisor of the number of ways that a field is broken in, so that fields take turns with the ways.</summary>
    private const int Share = 5;

    public UntrustedRecordTests()
    {
        _folder.Write("returned/ada-berg.xlsx", SmallClass.Filled(SmallClass.Ada));
        _folder.Write("dealt/dealt.json", System.Text.Encoding.UTF8.GetBytes(DealtText));
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>What may stand in a field's place, as JSON.</summary>
    private static IEnumerable<string> Instead(JsonNode? value) =>
        [
            "null",
            "[]",
            "{}",
            "\"\"",
            "0",
            "-1",
            "1e999",
            "1e-28",
            "-1e308",
            "99999999999999999999",
            "true",
            "[null]",
            "\"../../outside\"",
            "\"\\u0000\"",
            "\"\\ud800\"",
            "NaN",
            $"\"{new string('x', 5000)}\"",
            string.Concat(Enumerable.Repeat("[", 200)) + string.Concat(Enumerable.Repeat("]", 200)),
            .. value is JsonArray { Count: > 0 } list
                ? [$"[{list[0]!.ToJsonString()},{list[0]!.ToJsonString()}]"]
                : (IEnumerable<string>)[],
            .. value is JsonValue text && text.TryGetValue<string>(out var words) && words.StartsWith('=')
                ? ["\"=nobody*2\"", "\"=1+\"", "\"=A1\""]
                : (IEnumerable<string>)[],
        ];

    /// <summary>The text with every field replaced in turn; of a list, its first and its last item.</summary>
    private static IEnumerable<(string What, string Text)> Broken(string text)
    {
        const string mark = "\"@@here@@\"";
        var root = JsonNode.Parse(text)!;
        foreach (var node in All(root).ToList())
        {
            var (parent, path) = (node.Parent!, node.GetPath());
            // The node itself goes back to its place, so that those below it stay part of the whole.
            var (name, index) = parent is JsonObject ? (node.GetPropertyName(), -1) : ("", node.GetElementIndex());
            Put(JsonNode.Parse(mark)!);
            var with = root.ToJsonString();
            Put(node);
            foreach (var instead in Instead(node))
                yield return (
                    $"{path} = {(instead.Length > 60 ? instead[..60] : instead)}",
                    with.Replace(mark, instead, StringComparison.Ordinal)
                );
            if (parent is not JsonObject fields)
                continue;
            fields.Remove(name);
            yield return ($"{path} missing", root.ToJsonString());
            fields.Add(name, node);
            var twice = node.ToJsonString();
            yield return ($"{path} twice", with.Replace(mark, $"{twice},\"{name}\":{twice}", StringComparison.Ordinal));

            void Put(JsonNode there)
            {
                if (parent is JsonObject known)
                    known[name] = there;
                else
                    parent.AsArray()[index] = there;
            }
        }
        for (var length = 0; length < text.Length; length += Math.Max(1, text.Length / 60))
            yield return ($"cut off at {length}", text[..length]);
    }

    /// <summary>Every field below a node: of lists the first item, and of one list at a time the last.</summary>
    private static IEnumerable<JsonNode> All(JsonNode node, bool alsoLast = true)
    {
        IEnumerable<(JsonNode Child, bool AlsoLast)> children = node switch
        {
            JsonObject map => map.Select(pair => pair.Value).OfType<JsonNode>().Select(child => (child, alsoLast)),
            JsonArray { Count: > 1 } list when alsoLast => [(list[0]!, true), (list[^1]!, false)],
            JsonArray list => list.OfType<JsonNode>().Take(1).Select(child => (child, alsoLast)),
            _ => [],
        };
        return children.ToList().SelectMany(child => All(child.Child, child.AlsoLast).Prepend(child.Child));
    }

    private GradePaths Paths => new(_folder.Of("dealt"), _folder.Of("returned"));

    private string GradesText() =>
        System.Text.Encoding.UTF8.GetString(
            GradeCommands
                .Grade(Paths with { Due = Exercises.Deadlines.DueWish.Parse("2026-11-20T17:00") })
                .Files.Single(file => file.Path == GradesJson.FileName)
                .Content
        );

    private static void AssertClear(string what, Produced produced)
    {
        foreach (var problem in produced.Problems)
        {
            Assert.True(
                problem.Expected.Length > 10
                    && problem.File.EndsWith(".json", StringComparison.Ordinal)
                    && problem.Found.Length is > 0 and < 2000,
                $"{what}: {problem}"
            );
        }
    }

    private static void Try(string what, Func<Produced> make)
    {
        try
        {
            var produced = make();
            AssertClear(what, produced);
            Assert.All(produced.Files, file => Assert.DoesNotContain("..", file.Path, StringComparison.Ordinal));
            foreach (var file in produced.Files.Where(file => file.Path is "grades.json" or "grades.csv"))
                Assert.NotEmpty(file.Content);
        }
        catch (Exception bug) when (bug is not Xunit.Sdk.XunitException)
        {
            Assert.Fail($"{what}: {bug}");
        }
    }

    [Fact]
    public void No_broken_deal_breaks_grading()
    {
        var tried = 0;
        foreach (var (what, text) in Trials.Some(Broken(DealtText), Share))
        {
            File.WriteAllText(_folder.Of("dealt", "dealt.json"), text);
            Try(what, () => GradeCommands.Grade(Paths));
            tried++;
        }
        Assert.True(tried > 1000 / Share, $"{tried} files");
    }

    [Fact]
    public void No_broken_grades_break_what_is_made_of_them()
    {
        var tried = 0;
        foreach (var (what, text) in Trials.Some(Broken(GradesText()), Share))
        {
            _folder.Write("graded/grades.json", System.Text.Encoding.UTF8.GetBytes(text));
            Try(what, () => GradeCommands.Regrade(Paths with { Graded = _folder.Of("graded") }));
            tried++;
        }
        Assert.True(tried > 500 / Share, $"{tried} files");
    }

    [Fact]
    public void An_id_with_a_path_in_it_is_refused_in_both()
    {
        var dealt = DealtJson.Read("dealt.json", DealtText.Replace("\"ada-berg\"", "\"../../ada\"", StringComparison.Ordinal));
        Assert.Contains(dealt.Problems, problem =>
            problem.Found.Contains("../../ada", StringComparison.Ordinal) && problem.Found.Contains("file's name", StringComparison.Ordinal)
        );

        var workbook = DealtJson.Read(
            "dealt.json",
            DealtText.Replace("workbooks/ada-berg.xlsx", "../ada-berg.xlsx", StringComparison.Ordinal)
        );
        Assert.Contains("../ada-berg.xlsx", Assert.Single(workbook.Problems).Found, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../ada")]
    [InlineData("/tmp/ada")]
    [InlineData("..\\\\ada")]
    [InlineData("con")]
    [InlineData("ada-berg\\n")]
    public void Nothing_is_written_for_an_id_that_is_no_name_of_a_file(string id)
    {
        _folder.Write(
            "dealt/dealt.json",
            System.Text.Encoding.UTF8.GetBytes(
                DealtText
                    .Replace("\"ada-berg\"", $"\"{id}\"", StringComparison.Ordinal)
                    .Replace("/ada-berg.xlsx", $"/{id}.xlsx", StringComparison.Ordinal)
            )
        );
        var produced = GradeCommands.Grade(Paths);
        Assert.Empty(produced.Files);
        Assert.Contains("the id is no student's", Assert.Single(produced.Problems).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_may_use_the_steps_before_it()
    {
        var dealt = SmallClass.Deal(change: exercise =>
            exercise with
            {
                Steps =
                [
                    new(
                        "half_of_it",
                        "Half of it",
                        CellFormulas.Formulas.CellFormula.Of($"={exercise.Givens[0].Id}/2"),
                        exercise.Givens[0].Unit
                    ),
                    new("quarter_of_it", "A quarter of it", CellFormulas.Formulas.CellFormula.Of("=half_of_it/2"), exercise.Givens[0].Unit),
                ],
            }
        );
        var text = DealtJson.Write(dealt);
        Assert.Empty(DealtJson.Read("dealt.json", text).Problems);
        Assert.NotEmpty(DealtJson.Read("dealt.json", text.Replace("=half_of_it/2", "=quarter_of_it/2", StringComparison.Ordinal)).Problems);
    }

    [Fact]
    public void Grades_hold_whatever_students_type_and_are_read_again()
    {
        // More than any given of an exercise, and a character that no text for people holds (U+0001).
        var text = System
            .Text.RegularExpressions.Regex.Replace(GradesText(), "\"value\": [-0-9.E+]+", "\"value\": 1e300")
            .Replace("\"note\": \"", "\"note\": \"\\u0001", StringComparison.Ordinal);
        Assert.Contains("1e300", text, StringComparison.Ordinal);
        Assert.Empty(GradesJson.Read("grades.json", text, SmallClass.Dealt).Problems);
    }

    [Fact]
    public void A_time_zone_that_is_not_known_is_not_taken_for_another()
    {
        var problem = Assert.Single(
            GradesJson
                .Read("grades.json", GradesText().Replace("\"UTC\"", "\"Mars/Olympus\"", StringComparison.Ordinal), SmallClass.Dealt)
                .Problems
        );
        Assert.Contains("“Mars/Olympus” is no time zone", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void When_work_was_due_is_known_again_without_being_told()
    {
        var graded = _folder.Of("graded");
        Produced Grade(string? due) =>
            GradeCommands.Grade(Paths with { Due = due is null ? null : Exercises.Deadlines.DueWish.Parse(due), Graded = graded });
        void Record(Produced produced) =>
            _folder.Write("graded/grades.json", produced.Files.Single(file => file.Path == GradesJson.FileName).Content);

        var first = Grade("2026-11-20T17:00");
        Record(first);
        Assert.Equal(DueReading.ZoneAssumed, Assert.Single(first.Notes.OfType<Note.DueAsNamed>()).Due.Reading);

        var again = Grade(null);
        Assert.Equal("2026-11-20 17:00 (UTC)", Assert.Single(again.Notes.OfType<Note.DueAsBefore>()).Due.ToString());
        Record(again);
        Assert.False(Assert.Single(GradeCommands.Regrade(Paths with { Graded = graded }).Notes.OfType<Note.DueAsBefore>()).AsDealt);

        var changed = Assert.Single(Grade("2026-11-21T17:00").Notes.OfType<Note.DueChanged>());
        Assert.Equal(("2026-11-20 17:00 (UTC)", "2026-11-21 17:00 (UTC)"), (changed.Before.ToString(), changed.Now!.ToString()));
        Record(Grade("none"));
        Assert.DoesNotContain(Grade(null).Notes, note => note is Note.DueAsBefore or Note.DueAsNamed or Note.DueChanged);
    }
}
