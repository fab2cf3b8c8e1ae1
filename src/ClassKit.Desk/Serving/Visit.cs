using System.Text;
using ClassKit.Content.Classes;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Frame;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Safety;
using ClassKit.Pages.Rendering;
using ClassKit.UseCases.Recording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ClassKit.Desk.Serving;

/// <summary>One request of the desk's browser, and the ways to answer it.</summary>
/// <param name="context">The request.</param>
/// <param name="desk">What the desk has at hand.</param>
/// <param name="form">What was typed; null for a page that is only looked at.</param>
internal sealed class Visit(HttpContext context, DeskState desk, IFormCollection? form = null)
{
    private const string HtmlType = "text/html; charset=utf-8";

    /// <summary>What the desk has at hand.</summary>
    public DeskState Desk => desk;

    /// <summary>The request.</summary>
    public HttpContext Context => context;

    /// <summary>The folder; pages that need one are not shown before there is one.</summary>
    public TeachingFolder Folder =>
        desk.Folders.Current ?? throw new InvalidOperationException("A page that needs a folder was shown without one.");

    /// <summary>What every page of this visit knows of its place.</summary>
    public Place Place =>
        new(
            context.Request.PathBase + "/",
            desk.Keys.FormToken,
            context.Request.Path.Value!.TrimStart('/') + context.Request.QueryString,
            desk.Folders.Current,
            desk.Jobs.Open
        );

    /// <summary>How far a round is; null if nothing readable was dealt there.</summary>
    public RoundState? Look(Round round) => desk.Kept.Get<RoundState>(round.Folder, StampOf(round)) ?? Looked(round);

    /// <summary>A step of the address, as the browser sent it: to be looked up, never to be opened.</summary>
    public string? Step(string name) => context.GetRouteValue(name) as string;

    /// <summary>What stands behind a name of the address's query, or was typed into a field; empty if nothing.</summary>
    public string Typed(string name) => (form is null ? context.Request.Query[name] : form[name]) is [{ } text, ..] ? text.Trim() : "";

    /// <summary>What was typed into a field of the form that was sent; null if it had none of that name.</summary>
    public string? Sent(string name) => form is not null && form[name] is [{ } text, ..] ? text.Trim() : null;

    /// <summary>What was typed as it is, line ends as files have them.</summary>
    public string Text(string name) => form?[name] is [{ } text, ..] ? text.ReplaceLineEndings("\n") : "";

    /// <summary>Everything behind a name.</summary>
    public IReadOnlyList<string> All(string name) =>
        [.. ((form is null ? context.Request.Query[name] : form[name]).ToArray() ?? []).OfType<string>()];

    /// <summary>True if a box was ticked.</summary>
    public bool Ticked(string name) => Typed(name).Length > 0;

    /// <summary>True where the form shows another draft of that name than the one that was begun last, in another window.</summary>
    public bool IsOfOther(string draft) => Sent(DeskForm.DraftField) is { } shown && shown != desk.Kept.KeyOf(draft);

    private RoundState? Looked(Round round)
    {
        var stamp = StampOf(round);
        return RoundState.Of(round) is { } state ? desk.Kept.Put(round.Folder, stamp, state) : null;
    }

    private static string StampOf(Round round) =>
        Kept.StampOf(
            Path.Combine(round.Dealt, "dealt.json"),
            Path.Combine(round.Graded, "grades.json"),
            Path.Combine(round.Graded, CorrectionsReader.FileName),
            round.Returned,
            Path.Combine(round.FollowUp, "dealt.json")
        );

    /// <summary>Who changes the record, now.</summary>
    public Author Author(string why) => new(desk.Now, Environment.UserName, why);

    /// <summary>Shows a page.</summary>
    public Task Show<TPage>(params IEnumerable<(string Name, object? Value)> parameters)
        where TPage : IComponent => Answer(PageRenderer.Render<TPage>([("Place", Place), .. parameters]), isSheet: false);

    /// <summary>Shows a page behind which there is no desk any more.</summary>
    public Task ShowLast<TPage>(params IEnumerable<(string Name, object? Value)> parameters)
        where TPage : IComponent => Html(PageRenderer.Render<TPage>([("Place", Place), .. parameters]));

    /// <summary>Shows what answered a form, once more.</summary>
    public Task ShowAgain(FormAnswer answer)
    {
        context.Response.StatusCode = answer.Status;
        return answer.IsSheet ? Sheet(answer.Html) : Html(answer.Html);
    }

    /// <summary>
    /// Where a browser sent a form to go on with what comes of it, it is led to that: it would ask whether to send the form again whenever
    /// somebody goes back. The head is of W3C Fetch Metadata; a script that asks for a page, and takes it apart, says otherwise there.
    /// </summary>
    private Task Answer(string html, bool isSheet)
    {
        if (HttpMethods.IsPost(context.Request.Method) && context.Request.Headers["Sec-Fetch-Mode"] == "navigate")
            return GoTo(desk.Answers.Keep(new(context.Response.StatusCode, html, isSheet)));
        return ShowAgain(new(context.Response.StatusCode, html, isSheet));
    }

    /// <summary>Says that there is nothing of that name.</summary>
    public Task Nothing()
    {
        context.Response.StatusCode = StatusCodes.Status404NotFound;
        return Show<WordPage>(
            (nameof(WordPage.Title), "There is nothing of that name"),
            (
                nameof(WordPage.Words),
                "It may have been renamed or moved. If it was a page of a lesson, open the lesson again and it is prepared anew. Everything else is found from the first page, This week."
            )
        );
    }

    /// <summary>Says that the folder cannot be read or written now.</summary>
    /// <param name="why">What the system says of it; null where the folder is not there.</param>
    public Task Unreachable(string? why)
    {
        context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
        return Show<WordPage>(
            (nameof(WordPage.Title), why is null ? "Your folder is not there" : "Something could not be read or written"),
            (
                nameof(WordPage.Words),
                why is null
                    ? $"{Folder.Root} cannot be found: it was moved or renamed, or what it lies on, such as a stick or a share, is not connected. Bring it back and load this page again. What you kept before is in it; what you sent just now was not kept."
                    : $"{why} What you kept before is as it was; what you sent just now was not kept. Look whether there is room, and whether another program has the file open; then go back and send it again."
            )
        );
    }

    /// <summary>Answers for the class that the address names.</summary>
    public Task InClass(Func<ClassEntry, Task> answer) => Folder.Class(Step("class")) is { } known ? answer(known) : Nothing();

    /// <summary>Answers for the class and the lesson that the address names.</summary>
    public Task InLesson(Func<ClassEntry, LessonEntry, Task> answer) =>
        InClass(known => Folder.Lesson(Step("lesson")) is { } lesson ? answer(known, lesson) : Nothing());

    /// <summary>Answers for the round that the address names.</summary>
    public Task InRound(Func<ClassEntry, RoundState, Task> answer) =>
        InClass(known => Folder.Round(known, Step("round")) is { } round && Look(round) is { } state ? answer(known, state) : Nothing());

    /// <summary>Shows a page that was made to stand alone.</summary>
    public Task ShowSheet(string html) => Answer(html, isSheet: true);

    private Task Sheet(string html)
    {
        SafeHeaders.OfSheet(context.Response, SheetScript.Of(html));
        return Html(html);
    }

    /// <summary>
    /// Shows a page that was made to stand alone, or gives it out, piece by piece: it is never whole in memory. It holds no script.
    /// </summary>
    /// <param name="pieces">Its text.</param>
    /// <param name="keptAs">The name of the file to keep; null to show it.</param>
    public async Task Pieces(IEnumerable<string> pieces, string? keptAs = null)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        SafeHeaders.OfSheet(context.Response, null);
        if (keptAs is not null)
            context.Response.Headers.ContentDisposition = Attached(keptAs);
        context.Response.ContentType = HtmlType;
        if (HttpMethods.IsHead(context.Request.Method))
            return;
        foreach (var piece in pieces)
            await context.Response.Body.WriteAsync(Encoding.UTF8.GetBytes(piece), context.RequestAborted);
    }

    /// <summary>Goes on with a page, below the room.</summary>
    public Task GoTo(string page)
    {
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = context.Request.PathBase + "/" + Ascii(page);
        return Task.CompletedTask;
    }

    /// <summary>Names of classes and folders have letters of every script, and a header has none of them (RFC 9110, 5.5).</summary>
    private static string Ascii(string page) =>
        string.Concat(page.EnumerateRunes().Select(rune => rune.IsAscii ? rune.ToString() : Uri.EscapeDataString(rune.ToString())));

    /// <summary>Begins long work and shows how far it is.</summary>
    public Task Begin(JobOrder order) => GoTo($"jobs/{desk.Jobs.Add(order).Id}");

    /// <summary>Answers with a page's text.</summary>
    private Task Html(string html) => Write(HtmlType, Encoding.UTF8.GetBytes(html));

    /// <summary>Answers with a file to keep.</summary>
    public Task Download(string name, string kind, byte[] content)
    {
        context.Response.Headers.ContentDisposition = Attached(name);
        return Write(kind, content);
    }

    private static string Attached(string name) => $"attachment; filename*=UTF-8''{Uri.EscapeDataString(name)}";

    /// <summary>Answers with bytes.</summary>
    public Task Write(string kind, byte[] content)
    {
        context.Response.ContentType = kind;
        context.Response.ContentLength = content.Length;
        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : context.Response.Body.WriteAsync(content).AsTask();
    }
}
