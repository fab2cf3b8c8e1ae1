using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Tests.Lessons;

/// <summary>The breads of a series, read as the handbook writes them.</summary>
public sealed class SeriesListTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    private readonly string _lesson = File.ReadAllText(Path.Combine(Repository.Lesson, "lesson.md")).ReplaceLineEndings("\n");

    public void Dispose() => _folder.Dispose();

    private Reading<Lesson> With(params string[] items)
    {
        _folder.Copy(Repository.PathOf("rubrics"), "rubrics");
        _folder.Copy(Repository.PathOf("lessons"), "lessons");
        return LessonReader.Read(_folder.Write(Path.Combine("lessons", Path.GetFileName(Repository.Lesson), "lesson.md"), Text(items)));
    }

    private string Text(string[] items) =>
        Complaint.Break(_lesson, "## Questions\n", $"## Series\n\n{string.Join('\n', items)}\n\n## Questions\n");

    [Fact]
    public void Everything_that_a_bread_can_differ_in_is_read()
    {
        var reading = With(
            "- **Buttermilk muffins: No leavening** (without Baking powder, double-acting; without Baking soda). The batter by itself.",
            "- **Buttermilk muffins: Soda too much** (Baking soda 3 %). A taste of soap.",
            "- **Buttermilk muffins: Old powder** (Baking powder, double-acting at 50 % strength). A tin that stood open.",
            "- **Buttermilk muffins: Held 20 min** (held 20 min after Mix). What the bowl has lost.",
            "- **Batter buns: Under-proofed** (Second rise 5–8 min). Baked too soon.",
            "- **Buttermilk muffins: Old tin** (Baking powder, double-acting, kept  open 6 months). What damp leaves of it.",
            "- **Buttermilk muffins: Older tin** (Baking soda grown old). What years leave of it."
        );
        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        var series = reading.Model!.Series;

        Assert.Equal(
            "No leavening, Soda too much, Old powder, Held 20 min, Under-proofed, Old tin, Older tin",
            string.Join(", ", series.Select(member => member.Name))
        );
        Assert.Equal(["baking_powder", "baking_soda"], series[0].Changes.Cast<SeriesChange.LeftOut>().Select(left => left.Ingredient.Id));
        Assert.Equal(3, Assert.IsType<SeriesChange.Share>(series[1].Changes.Single()).Percent);
        Assert.Equal(0.5, Assert.IsType<SeriesChange.Weakened>(series[2].Changes.Single()).Strength);
        Assert.Equal(new SeriesChange.Held("Mix", 20), series[3].Changes.Single());
        Assert.Equal(new SeriesChange.Timed("Second rise", 5, 8), series[4].Changes.Single());
        Assert.Equal(("baking_powder", "kept open 6 months"), Aged(series[5]));
        Assert.Equal(("baking_soda", "grown old"), Aged(series[6]));
        Assert.Equal("buttermilk_muffins_held_20_min", series[3].Id);
        Assert.Equal("What the bowl has lost.", series[3].Text.Written);
    }

    private static (string, string) Aged(SeriesMember member)
    {
        var aged = Assert.IsType<SeriesChange.Aged>(member.Changes.Single());
        return (aged.Ingredient.Id, aged.How);
    }

    [Theory]
    [InlineData("- Held 20 min", "This bread of a series reads `Held 20 min`", "No powder** (without")]
    [InlineData("- **Muffins: Old** (held 20 min after Mix). Text.", "`Muffins` is not a bread of this lesson", "Buttermilk muffins")]
    [InlineData("- **Buttermilk muffins: Old** (held 20 min after Kneading). Text.", "has no step `Kneading`", "Mix")]
    [InlineData("- **Buttermilk muffins: Old** (held 0 min after Mix). Text.", "holds the bread for no time", "Leave it out")]
    [InlineData(
        "- **Buttermilk muffins: Old** (without Instant dry yeast). Text.",
        "Buttermilk muffins has no instant yeast",
        "Buttermilk"
    )]
    [InlineData("- **Buttermilk muffins: Old** (without Baking sodda). Text.", "`Baking sodda` is not an ingredient", "Baking soda")]
    [InlineData("- **Buttermilk muffins: Old** (Baking soda at 150 % strength). Text.", "The strength is 150", "99")]
    [InlineData("- **Buttermilk muffins: Old** (Fine salt 2 years old). Text.", "Fine salt leavens nothing", "Name a powder")]
    [InlineData(
        "- **Buttermilk muffins: Old** (All-purpose flour 90 %). Text.",
        "The flour of `Old` adds up to 90 %",
        "All flour together is 100 %"
    )]
    [InlineData("- **Buttermilk muffins: Old** (Bake 20–10 min). Text.", "The duration is `Bake 20–10 min`", "shorter time first")]
    [InlineData("- **Buttermilk muffins: Old** (colder). Text.", "`colder` does not say in what", "`without Fine salt`")]
    public void What_cannot_be_is_said(string item, string found, string remedy)
    {
        var reading = With(item);

        Complaint.Only(reading, Complaint.LineOf(Text([item]), item), found, remedy);
    }

    [Fact]
    public void Two_of_one_name_are_said()
    {
        var reading = With(
            "- **Buttermilk muffins: Old** (held 20 min after Mix). Text.",
            "- **Buttermilk muffins: Old** (held 40 min after Mix). Text."
        );

        Assert.Contains("`Old` is the name of two breads", Assert.Single(reading.Problems).Found, StringComparison.Ordinal);
    }
}
