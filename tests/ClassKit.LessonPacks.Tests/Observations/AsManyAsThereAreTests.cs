using AngleSharp.Html.Parser;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;
using ClassKit.Pages;
using ClassKit.Pages.Values;
using ClassKit.Workbooks.Observations;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Sensory;

namespace ClassKit.LessonPacks.Tests.Observations;

/// <summary>
/// A lesson of one bread of which a team makes two, and one of four breads of which it makes one to six: everything that is filled in asks
/// for what there is.
/// </summary>
public sealed class AsManyAsThereAreTests
{
    private static readonly LessonPack OneBread = Of(2);
    private static readonly LessonPack FourBreads = Of(1, 2, 3, 6);

    public static TheoryData<int> Lessons => [1, 4];

    [Theory]
    [MemberData(nameof(Lessons))]
    public void The_workbook_has_a_table_of_each_bread_with_a_column_for_each_piece(int breads)
    {
        var pack = Taken(breads);
        var sheet = Workbook(ObservationWriter.Write(pack))["Observations"];
        foreach (var card in pack.Cards)
        {
            var title = sheet
                .Cells.Single(cell => cell.Key.Column == 1 && cell.Value.Stored.ToString() == card.Bread.Formula.Title)
                .Key.Row;
            var heads = Enumerable
                .Range(6, 3)
                .Select(column => sheet.Cells.GetValueOrDefault((title + 1, column))?.Stored.ToString() ?? "")
                .Where(head => head.Length > 0);
            Assert.Equal(Heads(card.Pieces), heads);
        }
        Assert.Equal(breads, sheet.Cells.Count(cell => cell.Value.Stored.ToString() == "Mean") - pack.Controls.Count);
    }

    /// <summary>
    /// What a program types into the cells in which the workbook has its heads is found again, and nothing stands for a piece that nobody
    /// made.
    /// </summary>
    [Fact]
    public void What_is_typed_below_the_heads_is_read_again()
    {
        const string Typing = """
            s = w['Observations']
            s['B4'] = '2'
            heads = {}
            for r in range(1, 120):
                for c in range(1, 12):
                    if s.cell(r, c).value in ('Measured', 'First', 'Second', 'Third'):
                        heads.setdefault(r, []).append(c)
                if s.cell(r, 1).value == 'Height':
                    for c in heads[max(heads)]: s.cell(r, c).value = 50 + c

            """;
        var form = new ObservationForm(FourBreads);
        var fields = ObservationReader.Read(OpenPyXl.Run(ObservationWriter.Write(FourBreads), Typing).Saved, form).Fields;
        var read = TeamMeasurements.Of(form, fields, "file");

        Assert.Equal(
            [1, 2, 3, 3],
            FourBreads.Cards.Select(card =>
                read.Values.Count(value => value.Bread == card.Bread.Formula.Id && value.Measure == Measure.Height)
            )
        );
        Assert.Empty(read.Unread);
    }

    [Theory]
    [MemberData(nameof(Lessons))]
    public void Sheet_form_and_board_ask_for_as_many(int breads)
    {
        var pack = Taken(breads);
        var sheet = new HtmlParser().ParseDocument(Page(pack, "observations.html"));
        var form = new HtmlParser().ParseDocument(HtmlPages.ObservationForm(new(pack)));
        var grid = sheet.QuerySelector(".sheet-grid")!;
        Assert.Equal(
            pack.Cards.SelectMany(card => Heads(card.Pieces)),
            grid.QuerySelectorAll("thead tr:last-child th")
                .Select(head => head.TextContent)
                .Where(head => head is not ("Mean" or "Control"))
        );
        foreach (var card in pack.Cards)
        {
            Assert.Equal(grid.Of(card.Bread.Formula.Title)[^1].Cells.Count, grid.Of(card.Bread.Formula.Title)[^2].Cells.Count);
            Assert.Equal(Heads(card.Pieces).Length, form.QuerySelectorAll($"[data-field^='{card.Bread.Formula.Id}.height.']").Length);
        }
        Assert.Equal(breads, form.QuerySelectorAll("[data-view^='bread-']").Length);
        Assert.Contains(
            breads == 1 ? "measure two pieces of each" : "measure up to three pieces of each",
            Page(pack, "projector.html"),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("of three", sheet.Body!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>
    /// Counted by hand: 24 tasters take 24 bites of each bread; the triangle's 72 are half of A and half of B, and one bread alone is both.
    /// </summary>
    [Fact]
    public void The_tasting_says_into_how_many_bites_what_there_is_is_cut()
    {
        var one = new HtmlParser().ParseDocument(Page(OneBread, "tasting-key.html")).QuerySelector("table")!.TextContent;
        Assert.Contains($"96 bites: each of 12 {OneBread.Cards[0].Bread.Pieces} into 8", one, StringComparison.Ordinal);

        var four = new HtmlParser().ParseDocument(Page(FourBreads, "tasting-key.html")).QuerySelector("table")!.TextContent;
        Assert.Contains($"24 bites: each of 6 {FourBreads.Cards[0].Bread.Pieces} into 4", four, StringComparison.Ordinal);
        Assert.Contains($"24 bites: each of 12 {FourBreads.Cards[1].Bread.Pieces} into 2", four, StringComparison.Ordinal);
        Assert.Contains($"96 bites: each of 36 {FourBreads.Cards[3].Bread.Pieces} into 3", four, StringComparison.Ordinal);
        Assert.Equal(4, Workbook(TastingWriter.Write(FourBreads))["Scales"].Cells.Count(cell => cell.Value.Stored.ToString() == "mean"));
    }

    private static LessonPack Taken(int breads) => breads == 1 ? OneBread : FourBreads;

    private static string[] Heads(int made) =>
        made switch
        {
            1 => ["Measured"],
            2 => ["First", "Second"],
            _ => ["First", "Second", "Third"],
        };

    private static string Page(LessonPack pack, string file) => HtmlPages.Pack(pack).Single(page => page.FileName == file).Html;

    private static Dictionary<string, SheetSnapshot> Workbook(byte[] bytes) =>
        ReturnedWorkbookReader.Read(bytes).Workbook!.Sheets.ToDictionary(sheet => sheet.Name);

    private static LessonPack Of(params int[] made)
    {
        var lesson = Read("one-tin-three-lifts");
        var breads = lesson
            .Formulas.Append(Read("thin-air-quick-breads").Formulas[0])
            .Take(made.Length)
            .Zip(made, (bread, pieces) => bread with { TeamMakes = pieces });
        var profile = ClassProfileReader.Read(Repository.PathOf("demo-cohort", "class.md")).Model!;
        return PackProse.InWords(
            new(
                ComputedPack.Build(lesson with { Formulas = [.. breads], Demonstrations = [], TalkingPoints = [] }, profile).Value,
                new(null, null, null, [], null)
            )
        );
    }

    private static Lesson Read(string id) => LessonReader.Read(Repository.PathOf("lessons", id, "lesson.md")).Model!;
}
