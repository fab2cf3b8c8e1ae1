using System.IO.Compression;
using System.Text.Json;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.ItemBanks.Packages;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.ItemBanks;

/// <summary>
/// The package qti3-item-player of the npm registry (MIT, certified by 1EdTech for QTI 3.0, advanced delivery), playing items in Chromium.
/// It is fetched by <c>.ci/qti-player</c> and no part of ours; it shares no code with what writes the items.
/// </summary>
internal sealed class ForeignPlayer : IAsyncDisposable
{
    private const string FolderVariable = "CLASSKIT_QTI_PLAYER";
    private const string Site = "https://player.example.org/";
    private static readonly string[] Scripts = ["vue.min.js", "qti3Player.umd.min.js"];

    private readonly ChromiumBrowser _chromium;
    private readonly IPage _page;

    private ForeignPlayer(ChromiumBrowser chromium, IPage page) => (_chromium, _page) = (chromium, page);

    /// <summary>What the player complained of since it was opened.</summary>
    public List<string> Complaints { get; } = [];

    /// <summary>Opens the player where a package's files are served beside it; skips the test where the player was not fetched.</summary>
    public static async Task<ForeignPlayer> OpenAsync(IReadOnlyDictionary<string, byte[]> files)
    {
        var folder = Environment.GetEnvironmentVariable(FolderVariable) ?? "";
        if (!Scripts.All(script => File.Exists(Path.Combine(folder, script))))
            Assert.Skip(
                $"This test needs a player of QTI 3.0 from the npm registry: bash .ci/qti-player FOLDER fetches it and plays, with {FolderVariable} as that folder."
            );
        var chromium = await ChromiumBrowser.TakeAsync();
        var page = await chromium.Browser.NewPageAsync();
        await page.RouteAsync("**/*", route => files.TryGetValue(
                route.Request.Url.Replace(Site, "", StringComparison.Ordinal),
                out var bytes
            )
                ? route.FulfillAsync(new() { BodyBytes = bytes })
                : route.FulfillAsync(
                    new()
                    {
                        Body = Frame,
                        ContentType = "text/html; charset=utf-8",
                        Status = route.Request.Url.EndsWith(".html", StringComparison.Ordinal) ? 200 : 404,
                    }
                ));
        var player = new ForeignPlayer(chromium, page);
        page.PageError += (_, error) => player.Complaints.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
                player.Complaints.Add(message.Text);
        };
        await page.GotoAsync(Site + "items/player.html");
        foreach (var script in Scripts)
            await page.AddScriptTagAsync(new() { Path = Path.Combine(folder, script) });
        await page.EvaluateAsync(Play);
        return player;
    }

    /// <summary>The files of a package by their paths in it.</summary>
    public static IReadOnlyDictionary<string, byte[]> FilesOf(ItemBank bank)
    {
        using var zip = new ZipArchive(new MemoryStream(bank.Package), ZipArchiveMode.Read);
        return zip.Entries.ToDictionary(
            entry => entry.FullName,
            entry =>
            {
                using var stream = entry.Open();
                using var bytes = new MemoryStream();
                stream.CopyTo(bytes);
                return bytes.ToArray();
            }
        );
    }

    /// <summary>Shows an item; gives the numbers in its table of givens, as the student reads them.</summary>
    public Task<string[]> ShowAsync(string identifier, string item) =>
        _page.EvaluateAsync<string[]>("async ([id, xml]) => await play.show(id, xml)", new[] { identifier, item });

    /// <summary>True if every picture of the item that is shown can be seen.</summary>
    public Task<bool> SeesPicturesAsync() =>
        _page.EvaluateAsync<bool>(
            "async () => (await Promise.all([...document.images].map(image => image.decode().then(() => true, () => false)))).every(seen => seen)"
        );

    /// <summary>
    /// Enters answers into the fields in their order, ends the attempt, and gives the score and what the player's windows say.
    /// </summary>
    /// <param name="answers">What is typed, or the words of the choice that is clicked; null leaves a field as it is, empty.</param>
    public async Task<(double Score, IReadOnlyList<string> Said)> AnswerAsync(IReadOnlyList<string?> answers)
    {
        var told = await _page.EvaluateAsync<JsonElement>("async answers => await play.answer(answers)", answers);
        return (told.GetProperty("score").GetDouble(), [.. told.GetProperty("said").EnumerateArray().Select(said => said.GetString()!)]);
    }

    public ValueTask DisposeAsync() => _chromium.DisposeAsync();

    private const string Frame =
        """<!doctype html><html lang="en"><head><title>Player</title></head><body><div id="player"></div></body></html>""";

    /// <summary>The player's own calls, as its documentation names them; typing and clicking are the browser's events.</summary>
    private const string Play = """
        () => new Promise(opened => {
          let player, told;
          console.log = () => {};
          Vue.config.errorHandler = error => console.error(String(error));
          const tell = what => told(what);
          new Vue({ render: make => make(qti3Player.default || qti3Player, {
            props: { suppressAlertMessages: true, suppressInvalidResponseMessages: true },
            on: { notifyQti3PlayerReady: ready => { player = ready; setTimeout(opened); }, notifyQti3ItemReady: tell, notifyQti3EndAttemptCompleted: tell } }) }).$mount("#player");
          const after = begin => new Promise(done => { told = done; begin(); });
          const close = () => document.querySelectorAll(".qti3-player-modal.show .qti-modal-feedback-ok").forEach(button => button.click());
          const enter = (field, answer) => {
            if (field.matches(".qti-choice-interaction")) {
              const chosen = field.querySelector("[aria-checked=true]");
              const choice = answer === null ? chosen : [...field.querySelectorAll("li")].find(one => one.querySelector(".qti-choice-description").textContent.trim() === answer);
              if (choice !== chosen) choice.click();
              return;
            }
            field.value = answer ?? "";
            field.dispatchEvent(new Event("input", { bubbles: true }));
          };
          window.play = {
            async show(guid, xml) {
              await after(() => player.loadItemFromXml(xml, { guid, status: "interacting", sessionControl: { max_attempts: 0, show_feedback: true, validate_responses: false } }));
              return [...document.querySelectorAll(".qti-item-body td")].map(cell => cell.textContent.trim());
            },
            async answer(answers) {
              close();
              const fields = [...document.querySelectorAll(".qti-item-body input[type=text], .qti-item-body textarea, .qti-item-body .qti-choice-interaction")];
              if (fields.length !== answers.length) throw new Error(`${fields.length} fields, ${answers.length} answers`);
              fields.forEach((field, at) => enter(field, answers[at]));
              await new Promise(done => setTimeout(done));
              const { state } = await after(() => player.endAttempt("marked"));
              return {
                score: Number(state.outcomeVariables.find(one => one.identifier === "SCORE").value),
                said: [...document.querySelectorAll(".qti3-player-modal.show .qti3-player-modal-body")].map(body => body.textContent.trim()) };
            }
          };
        })
        """;
}
