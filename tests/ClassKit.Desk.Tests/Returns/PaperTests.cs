using System.Net;
using ClassKit.CellFormulas.Values;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Tests.Tools;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.OnPaper;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Papers;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Tests.Returns;

/// <summary>Answers on paper that are typed in two sittings, into two workbooks: neither wipes out the other.</summary>
public sealed class PaperTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task A_second_workbook_leaves_whoever_it_says_nothing_of_as_they_were()
    {
        await desk.DoneAsync("rounds/class/try", ("lesson", "thin-air-quick-breads"), ("seed", "5"));
        await desk.DoneAsync("rounds/class/deal");
        var round = desk.Folder.Rounds(desk.Folder.Class("class")!)[0];
        var dealt = DealtFolder.Read(round.Dealt).Model!;
        var (ada, ben) = (dealt.Students[0], dealt.Students[1]);
        var part = dealt
            .ExercisesOf(ada)
            .SelectMany(exercise => exercise.Parts.Select(part => (exercise.Id, Part: part)))
            .First(one => one.Part.IsNumber);
        PaperWork Work(DealtStudent who, double number) => new(who, "", [new(part.Id, part.Part.Id, CellValue.FromNumber(number), false)]);

        await BringAsync(round, dealt, [Work(ada, 12.5), Work(ben, 3)]);
        Assert.Equal([12.5, 3], Standing());

        var said = await BringAsync(round, dealt, [Work(ben, 4)]);
        Assert.Equal([12.5, 4], Standing());
        Assert.Contains($"{ben.Who.Shown} has other answers on paper than before", said, StringComparison.Ordinal);
        Assert.DoesNotContain($"{ada.Who.Shown} has other", said, StringComparison.Ordinal);

        // The workbook that is taken from the page next time has them as well.
        using var answer = await desk.Client.SendAsync(desk.Request($"rounds/class/{round.Name}/paper/sheet", null));
        await BringAsync(round, dealt, [], await answer.Content.ReadAsByteArrayAsync());
        Assert.Equal([12.5, 4], Standing());

        IEnumerable<double> Standing() =>
            PaperFile
                .Read(round.Paper, dealt)
                .Model!.Work.OrderBy(work =>
                    work.Student == ada ? 0
                    : work.Student.Who.Id == ada.Who.Id ? 0
                    : 1
                )
                .Select(work => work.Answers.Single().Written.Number);
    }

    [Fact]
    public async Task What_is_no_such_workbook_is_refused_in_words_of_the_page()
    {
        await desk.DoneAsync("rounds/class/try", ("lesson", "thin-air-quick-breads"), ("seed", "6"));
        await desk.DoneAsync("rounds/class/deal");
        var round = desk.Folder.Rounds(desk.Folder.Class("class")!)[0];
        var page = await SendAsync(
            round,
            File.ReadAllBytes(Directory.EnumerateFiles(Path.Combine(round.Dealt, "workbooks")).First()),
            "20412.xlsx"
        );
        Assert.Contains("“20412.xlsx” is not taken in", page, StringComparison.Ordinal);
        Assert.Contains("Take the workbook for answers on paper of this round from here", page, StringComparison.Ordinal);
        Assert.DoesNotContain(".new", page, StringComparison.Ordinal);
    }

    private Task<string> BringAsync(Round round, DealtClass dealt, IReadOnlyList<PaperWork> work, byte[]? content = null) =>
        SendAsync(
            round,
            content ?? MakePaperSheet.Write(MakePaperSheet.Run(new(dealt) { Typed = new(work, []) }, Run.Unwatched)).Files[0].Content,
            "paper-answers.xlsx"
        );

    private async Task<string> SendAsync(Round round, byte[] content, string name)
    {
        var request = desk.Request($"rounds/class/{round.Name}/paper", []);
        var part = new ByteArrayContent(content);
        part.Headers.ContentDisposition = new("form-data") { Name = "file", FileNameStar = name };
        request.Content = new MultipartFormDataContent { { new StringContent(desk.Desk.Keys.FormToken), "token" }, part };
        using var answer = await desk.Client.SendAsync(request);
        return WebUtility.HtmlDecode(
            answer.Headers.Location is null ? await answer.Content.ReadAsStringAsync() : await desk.OverAsync(answer)
        );
    }
}
