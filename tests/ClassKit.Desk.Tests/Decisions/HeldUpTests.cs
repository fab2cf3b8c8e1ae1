using System.Net;
using System.Text.RegularExpressions;
using ClassKit.Desk.Tests.Tools;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.Workbooks.Filling;

namespace ClassKit.Desk.Tests.Decisions;

/// <summary>Whoever decides on an answer that could not be worked out need not decide again on what only follows from it.</summary>
public sealed class HeldUpTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string Round = "rounds/class/01-one-tin-three-lifts";
    private const string Who = "amara-osei";

    [Fact]
    public async Task What_follows_by_the_keys_formula_is_decided_with_it_where_that_is_ticked()
    {
        await desk.DoneAsync("rounds/class/try", ("lesson", "one-tin-three-lifts"), ("seed", "2026"));
        await desk.DoneAsync("rounds/class/deal");
        var round = desk.Folder.Round(desk.Folder.Class("class")!, "01-one-tin-three-lifts")!;
        var dealt = DealtFolder.Read(round.Dealt).Model!;
        // The batter by a formula that is not worked out; milk and egg from the batter, as the key has them.
        var layout = dealt.LayOut();
        var scaling = layout.Exercises.First(exercise => exercise.Answers.Count > 2 && exercise.Exercise.Id == "scaling");
        var cells = scaling.Answers.ToDictionary(place => place.Part.Id, place => place.Address);
        var names = scaling
            .Givens.Select(place => (place.Given.Id, place.Address))
            .Concat(cells.Select(cell => (Id: cell.Key, Address: cell.Value)))
            .ToDictionary(place => place.Id, place => place.Address);
        var parts = scaling.Answers.Select(place => place.Part).ToList();
        var first = parts.First(part => parts.Any(later => Names(later.Key.Text).Contains(part.Id)));
        var edits = parts.Select(part =>
            (WorkbookEdit)
                new EnterFormula(
                    cells[part.Id],
                    part == first
                        ? "=LAMBDA(x,x+1)(86)"
                        : Names(part.Key.Text)
                            .Where(names.ContainsKey)
                            .Distinct()
                            .OrderByDescending(name => name.Length)
                            .Aggregate(part.Key.Text, (text, name) =>
                                Regex.Replace(text, $@"\b{name}\b", names[name].ToString().Split('!')[^1])
                            )
                )
        );
        var blank = await File.ReadAllBytesAsync(Path.Combine(round.Dealt, "workbooks", Who + ".xlsx"));
        Directory.CreateDirectory(round.Returned);
        await File.WriteAllBytesAsync(Path.Combine(round.Returned, Who + ".xlsx"), WorkbookFiller.Fill(blank, [.. edits]));
        await desk.DoneAsync(Round + "/returns/judge");
        var waiting = Answers(round).Where(answer => answer.Outcome == Outcome.Unsupported).Select(answer => answer.Part.Id).ToList();
        Assert.True(waiting.Count > 1, string.Join(' ', waiting));

        var page = WebUtility.HtmlDecode(await desk.PageAsync(Round + "/decisions"));
        Assert.Contains($"name=\"with.{Who}\"", page, StringComparison.Ordinal);
        Assert.Contains("which waits as well", page, StringComparison.Ordinal);

        await desk.DoneAsync(
            Round + "/decisions/decide",
            ("part", $"scaling.{first.Id}"),
            ($"points.{Who}", "1"),
            ("reason", "Shown at the bench"),
            ($"with.{Who}", "yes")
        );

        var decided = Answers(round).Where(answer => waiting.Contains(answer.Part.Id)).ToList();
        Assert.All(decided, answer => Assert.Equal("Shown at the bench", answer.Correction!.Reason));
        Assert.Equal(1, decided.Single(answer => answer.Part.Id == first.Id).Points);
        Assert.All(decided.Where(answer => answer.Part.Id != first.Id), answer => Assert.Equal(answer.Part.Points, answer.Points));
    }

    private static IReadOnlyList<AnswerGrade> Answers(Desk.Folders.Round round) =>
        [
            .. GradedFolder
                .Read(round.Graded, DealtFolder.Read(round.Dealt).Model!)
                .Model!.Students.Single(student => student.Who.Id == Who)
                .Answers.Where(answer => answer.Exercise.Id == "scaling"),
        ];

    private static IEnumerable<string> Names(string formula) => Regex.Matches(formula, @"\b[a-z_]+\b").Select(match => match.Value);
}
