using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.Grading.Answers;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Practising;

/// <summary>
/// A self-checking page in Chromium, used as a student uses it. What is right is worked out here, from the numbers on the page.
/// </summary>
public sealed partial class SelfCheckTests : IDisposable
{
    private const string Thermometers = "oven_and_fridge";

    private static readonly string Bank = Path.Combine(Checkout.Demo.Root, "lessons", "practice");

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private async Task<IPage> OpenAsync(ChromiumBrowser chromium, BrowserNewContextOptions? options = null, params string[] exercises)
    {
        var arguments = exercises.DefaultIfEmpty(Thermometers).SelectMany(exercise => (string[])["--exercise", exercise]);
        ClassKitRun.Of(["practice", Bank, "--out", _folder.Of("out"), .. arguments]).Done();
        var context = await chromium.Browser.NewContextAsync(options);
        var page = await context.NewPageAsync();
        await page.GotoAsync(new Uri(_folder.Of("out", "practice.html")).AbsoluteUri);
        return page;
    }

    private static async Task<string> TypeAsync(IPage page, string part, string answer)
    {
        await page.GetByLabel($"Your answer to {part}").FillAsync(answer);
        await page.GetByRole(AriaRole.Button, new() { Name = $"Check {part}" }).ClickAsync();
        return await page.Locator($"section:has(> h3:text-matches('^{part} ')) > .reply").InnerTextAsync();
    }

    /// <summary>The same of many answers, without a journey to the browser and back for each.</summary>
    private static Task<string[]> TypeAllAsync(IPage page, string part, IReadOnlyList<string> answers) =>
        page.GetByRole(AriaRole.Button, new() { Name = $"Check {part}" })
            .EvaluateAsync<string[]>(
                """
                (button, answers) => {
                  const section = button.closest("section");
                  const input = section.querySelector("input");
                  return answers.map(answer => { input.value = answer; button.click(); return section.querySelector(".reply").innerText; });
                }
                """,
                answers
            );

    private static async Task<double> GivenAsync(IPage page, string label) =>
        double.Parse(
            Number().Match(await page.GetByRole(AriaRole.Row, new() { Name = label }).Locator("td").First.InnerTextAsync()).Value,
            CultureInfo.InvariantCulture
        );

    private static string Text(double value, int decimals = 1) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);

    [Fact]
    public async Task An_answer_is_right_or_not_yet_or_looks_like_a_misconception_which_is_set_right_in_the_exercises_words()
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await OpenAsync(chromium);
        var oven = await GivenAsync(page, "Oven on the card");

        Assert.Equal("Type an answer first.", await TypeAsync(page, "1a", " "));
        Assert.Equal("This cannot be read as a number. Type one number; °C stands beside it.", await TypeAsync(page, "1a", "quite hot"));
        Assert.Equal("Not yet. Look at the numbers once more, or open a hint.", await TypeAsync(page, "1a", "77"));
        Assert.Equal(
            "Not yet. You divided before you subtracted. Take the 32 away first, then divide by 1.8.",
            await TypeAsync(page, "1a", Text(oven / 1.8 - 32))
        );
        Assert.Equal("Not yet. Your answer is right in °F; here °C is asked.", await TypeAsync(page, "1a", Text(oven)));
        Assert.Equal(
            "Not yet. Your answer is 10 times what it should be: check the units and the percent sign before the method.",
            await TypeAsync(page, "1a", Text((oven - 32) / 1.8 * 10))
        );
        Assert.Equal("0 of 3 parts right", await page.Locator("#progress").InnerTextAsync());
        Assert.Equal("Right.", await TypeAsync(page, "1a", Text((oven - 32) / 1.8)));
        Assert.Equal("1 of 3 parts right", await page.Locator("#progress").InnerTextAsync());
    }

    [Fact]
    public async Task The_method_carried_on_from_a_wrong_answer_is_named_with_the_part_where_the_slip_is()
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await OpenAsync(chromium, null, "ice_step_by_step");
        var (water, tap, need) = (
            await GivenAsync(page, "Water in all"),
            await GivenAsync(page, "Tap water"),
            await GivenAsync(page, "Water wanted")
        );

        Assert.StartsWith(
            "Not yet. You added the two temperatures.",
            await TypeAsync(page, "1a", Text(tap + need)),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "Not yet. The method is right, but it carries on from a slip in 1a: put that right first.",
            await TypeAsync(page, "1b", Text(water * (tap + need))),
            StringComparison.Ordinal
        );
        Assert.Equal("Right.", await TypeAsync(page, "1b", Text(water * (tap - need))));
    }

    /// <summary>
    /// Letters are chosen from a list, words are written beside it and checked by nobody. The dough's order is that of any bread book.
    /// </summary>
    [Fact]
    public async Task A_letter_is_chosen_and_words_are_written_and_not_checked()
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await OpenAsync(chromium, null, "order_of_a_loaf", "jar_beside_the_dough");
        async Task<string> ChooseAsync(string part, string? words)
        {
            var letter = words is null
                ? "–"
                : (
                    await page.Locator("ul.options").First.Locator("li").Filter(new() { HasText = words }).Locator("b").InnerTextAsync()
                ).Trim();
            await page.GetByLabel($"Your answer to {part}").SelectOptionAsync(new SelectOptionValue { Label = letter });
            await page.GetByRole(AriaRole.Button, new() { Name = $"Check {part}" }).ClickAsync();
            return await page.Locator($"section:has(> h3:text-matches('^{part} ')) > .reply").InnerTextAsync();
        }

        Assert.Equal("Choose a letter first.", await ChooseAsync("1a", null));
        Assert.StartsWith(
            "Not yet. Pieces that are scaled straight from the mixer",
            await ChooseAsync("1a", "Scale the pieces"),
            StringComparison.Ordinal
        );
        Assert.Equal("Right.", await ChooseAsync("1a", "ferment in its tub"));
        Assert.Equal("1 of 7 parts right", await page.Locator("#progress").InnerTextAsync());

        var words = page.GetByLabel("Your answer to 2c");
        await words.FillAsync("The jar shows growth.");
        Assert.Equal("textarea", await words.EvaluateAsync<string>("element => element.localName"));
        Assert.Equal(0, await page.GetByRole(AriaRole.Button, new() { Name = "Check 2c" }).CountAsync());
        Assert.True(await page.GetByText("What a good answer to 2c says").IsVisibleAsync());
    }

    [Fact]
    public async Task The_page_reads_typed_numbers_as_the_grader_reads_them()
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await OpenAsync(chromium, null, Thermometers, "pan_loaf", "peeled_apples", "pounds_and_ounces");
        var random = new Random(5);
        var checks = 0;
        foreach (var (part, unit, low, high) in await PartsAsync(page))
        {
            List<string> texts = [.. Spellings((low + high) / 2, unit, random)];
            foreach (var (text, reply) in texts.Zip(await TypeAllAsync(page, part, texts)))
            {
                var isRight = AnswerText
                    .Read(text, unit)
                    .SelectMany(value => unit == "%" ? (double[])[value, value / 100] : [value])
                    .Any(value => value >= low && value <= high);
                Assert.True(
                    isRight == (reply == "Right."),
                    $"{part} ({low} to {high} {unit}): the grader takes “{text}” for {(isRight ? "right" : "not right")}; the page says: {reply}"
                );
                checks++;
            }
        }
        Assert.InRange(checks, 450, 4000);
    }

    /// <summary>Every part with its unit and what is right, from the data in the page.</summary>
    private static async Task<List<(string Label, string Unit, double Low, double High)>> PartsAsync(IPage page)
    {
        var lines = await page.EvaluateAsync<string[]>(
            """
            () => { const data = JSON.parse(document.getElementById("self-check-data").textContent);
            return [...document.querySelectorAll("[data-part]")].map(section => { const part = data.parts[section.dataset.part];
            return [section.querySelector("h3").textContent.trim().split(" ")[0], part.unit, part.meanings[0].low, part.meanings[0].high].join("|"); }); }
            """
        );
        return
        [
            .. lines
                .Select(line => line.Split('|'))
                .Select(cell =>
                    (
                        cell[0],
                        cell[1],
                        double.Parse(cell[2], CultureInfo.InvariantCulture),
                        double.Parse(cell[3], CultureInfo.InvariantCulture)
                    )
                ),
        ];
    }

    private static IEnumerable<string> Spellings(double right, string unit, Random random)
    {
        var shown = unit == "%" ? right * 100 : right;
        var plain = Text(shown, 4);
        var whole = Math.Truncate(shown);
        yield return plain;
        yield return plain.Replace('.', ',');
        yield return $"  {plain} {unit} ";
        yield return $"{plain}{unit}.";
        yield return $"= {plain}";
        yield return $"≈{plain.Replace('.', ',')}\u00A0{unit}";
        yield return $"-{plain}";
        yield return $"\u2212{plain}";
        // The signs and digits of other keyboards, and words around a number.
        yield return Digits(plain, 0xFF10).Replace('.', '．');
        yield return Digits(plain, 0x0660).Replace('.', '٫');
        yield return Digits($"{plain} {unit}", 0x06F0).Replace('.', '٫');
        yield return Digits(plain, 0x0966);
        yield return Digits(plain, 0x1D7CE);
        yield return $"\u200E{plain}\u200F";
        yield return $"x = {plain}";
        yield return $"x ≈ {plain} {unit}";
        yield return $"answer: {plain} {unit} in all";
        yield return $"about {plain}";
        yield return $"ca. {plain}";
        yield return $"roughly {plain} {unit}!";
        yield return $"maybe {plain}";
        yield return $"{plain} ± 1";
        yield return $"{plain} or so";
        yield return $"{plain} dozen";
        yield return $"'{plain}";
        yield return $"{Text(shown / 100, 6)}·10²";
        yield return $"{Text(shown / 100, 6)} x 10^2";
        yield return $"{Text(shown * 1000, 4)}×10⁻³ {unit}";
        yield return $"{Text(shown / 10, 6)}e1";
        yield return $"{Text(shown / 10, 6)}E+01 {unit}";
        yield return $"${plain}";
        yield return $"{plain} €";
        yield return $"{plain} cents";
        yield return $"{Text(shown * 100, 4)}¢";
        yield return $"{Text(shown * 10, 4)}‰";
        yield return $"{whole}½";
        yield return $"{whole}-1/2 {unit}";
        yield return $"{whole} ¾";
        yield return $"{Text(shown / 1000, 7)} kg of it";
        yield return $"{plain} percent of all";
        yield return $"{plain}%";
        yield return $"1’{whole:000}";
        yield return $"1\u2009{whole:000}\u202F{unit}";
        yield return $"1,00,{whole:000}";
        yield return $"{plain}.5";
        yield return $"1,{plain},5";
        yield return $"{plain} %";
        yield return $"{Text(right, 6)}";
        yield return $"{plain} of it";
        yield return $"{whole} 1/2 {unit}";
        yield return $"{Text(shown * 4, 0)}/4";
        yield return $"{plain}e0";
        yield return Text(shown / 1000, 7) + " kg";
        yield return Text(shown * 16, 4) + " oz";
        yield return Text(shown * 1.8 + 32, 4) + " °F";
        yield return ((long)whole).ToString("#,0", CultureInfo.InvariantCulture);
        yield return ((long)whole).ToString("#,0", CultureInfo.InvariantCulture).Replace(',', '.');
        yield return ((long)whole).ToString("#,0", CultureInfo.InvariantCulture).Replace(',', '\'') + ",5";
        yield return $"{plain} {plain}";
        yield return "";
        yield return "1/0";
        yield return "," + plain;
        yield return plain.Insert(random.Next(plain.Length), ",");
        yield return plain.Insert(random.Next(plain.Length), " ");
    }

    [Fact]
    public async Task Hints_come_one_by_one_and_the_working_after_all_of_them_and_a_try_or_when_the_answer_is_right()
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await OpenAsync(chromium);
        var (hints, working) = (page.Locator(".hint:visible summary"), page.Locator(".worked-out:visible"));

        // A browser opens a hint first and says so afterwards, when the page shows the next.
        for (var seen = 1; seen <= 3; seen++)
        {
            await Assertions.Expect(hints).ToHaveCountAsync(seen);
            await Assertions.Expect(working).ToHaveCountAsync(0);
            await hints.Last.ClickAsync();
        }
        await Assertions.Expect(hints).ToHaveCountAsync(3);
        await Assertions.Expect(working).ToHaveCountAsync(0);

        await TypeAsync(page, "1b", "77");
        Assert.Equal("How 1b is worked out", (await working.InnerTextAsync()).Trim());

        await page.ReloadAsync();
        await TypeAsync(page, "1c", Text(await GivenAsync(page, "Rise in the mixer") / 1.8));
        Assert.Equal("How 1c is worked out", (await working.InnerTextAsync()).Trim());
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task It_passes_axe_with_replies_hints_and_working_in_view_and_asks_for_nothing(ColorScheme scheme)
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await OpenAsync(chromium, new() { ColorScheme = scheme, Offline = true });
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        var errors = new List<string>();
        page.Console += (_, message) => errors.Add(message.Text);
        await TypeAsync(page, "1a", "77");
        await TypeAsync(page, "1b", "nothing");
        await TypeAsync(page, "1c", Text(await GivenAsync(page, "Rise in the mixer") / 1.8));
        await page.Locator(".hint summary").First.ClickAsync();
        await page.Locator(".worked-out:visible summary").ClickAsync();

        Assert.Empty(await Axe.ViolationsAsync(page));
        Assert.Empty(asked);
        Assert.Empty(errors);
    }

    [Fact]
    public async Task The_enter_key_checks_and_without_a_script_hints_and_working_open_all_the_same()
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await OpenAsync(chromium);
        await page.GetByLabel("Your answer to 1a").FillAsync("77");
        await page.GetByLabel("Your answer to 1a").PressAsync("Enter");
        Assert.StartsWith("Not yet.", await page.Locator(".reply").First.InnerTextAsync(), StringComparison.Ordinal);

        var plain = await OpenAsync(chromium, new() { JavaScriptEnabled = false });
        Assert.Equal(0, await plain.GetByRole(AriaRole.Button).CountAsync());
        Assert.Equal(3, await plain.Locator(".hint:visible").CountAsync());
        Assert.Equal(3, await plain.Locator(".worked-out:visible").CountAsync());
        Assert.True(await plain.Locator("noscript p").IsVisibleAsync());
    }

    [Fact]
    public async Task On_paper_it_is_a_sheet_to_write_on_with_the_answers_on_the_last_page()
    {
        Tool.PdfToText.Require();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await OpenAsync(chromium, null, Thermometers, "later_bake");
        var rise = await GivenAsync(page, "Rise in the mixer");
        await page.PdfAsync(
            new()
            {
                Path = _folder.Of("practice.pdf"),
                Format = "A4",
                PreferCSSPageSize = true,
            }
        );

        var pages = Tool.PdfToText.Run("-layout", _folder.Of("practice.pdf"), "-").Split('\f', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(3, pages.Length);
        Assert.All(pages[..^1], sheet => Assert.DoesNotContain(Text(rise / 1.8, 2), sheet, StringComparison.Ordinal));
        Assert.All(pages, sheet => Assert.DoesNotMatch("Hint|Check|worked out|parts right", sheet));
        var printed = Regex.Match(pages[^1], @"1c .*?([0-9.]+)\s°C");
        Assert.Equal(rise / 1.8, double.Parse(printed.Groups[1].Value, CultureInfo.InvariantCulture), 0.05);
    }

    [Fact]
    public void Pages_of_a_class_keep_away_from_the_numbers_of_a_deal()
    {
        var roster = _folder.Of("roster.csv");
        File.WriteAllText(roster, "id,name\nada,Ada Berg\nben,Ben Okoye\n");
        ClassKitRun.Of("deal", Bank, "--exercise", Thermometers, "--roster", roster, "--out", _folder.Of("dealt")).Done();

        var run = ClassKitRun
            .Of(
                "practice",
                Bank,
                "--exercise",
                Thermometers,
                "--roster",
                roster,
                "--apart-from",
                _folder.Of("dealt"),
                "--out",
                _folder.Of("out")
            )
            .Done();

        Assert.Contains("2 pages to practise with", run.Output, StringComparison.Ordinal);
        Assert.Contains("<h1>Ada Berg</h1>", File.ReadAllText(_folder.Of("out", "pages", "ada.html")), StringComparison.Ordinal);
        Assert.Contains("<h1>Ben Okoye</h1>", File.ReadAllText(_folder.Of("out", "pages", "ben.html")), StringComparison.Ordinal);
    }

    private static string Digits(string text, int zero) =>
        string.Concat(
            text.Select(character => char.IsAsciiDigit(character) ? char.ConvertFromUtf32(zero + character - '0') : character.ToString())
        );

    [GeneratedRegex("[0-9.]+")]
    private static partial Regex Number();
}
