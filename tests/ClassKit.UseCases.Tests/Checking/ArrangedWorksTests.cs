using ClassKit.Content.Checking;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Checking;

/// <summary>Names behind <c>for</c> and under <c>excused from</c> that nothing has: nothing would follow from what was promised.</summary>
public sealed class ArrangedWorksTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("25 % for one-tin-three-lift", "", "one-tin-three-lifts", Weight.Doubtful)]
    [InlineData("25 % for One tin, three lifts", "", "One Tin, Three Lifts", Weight.Doubtful)]
    [InlineData("", "Safety question", "Safety questions", Weight.Doubtful)]
    [InlineData("", "welding", null, Weight.Noted)]
    [InlineData("25 % for one-tin-three-lifts; 50 % for Safety questions", "Safety questions", null, null)]
    public void A_work_that_nothing_is_called_is_told_with_what_was_meant(string extra, string excused, string? meant, Weight? weight)
    {
        var list = _folder.Write(
            "roster.csv",
            System.Text.Encoding.UTF8.GetBytes(
                $"id,name,extra time,excused from\nada,Ada Berg,\"{extra}\",\"{excused}\"\nben,Ben Okoye,,\n"
            )
        );
        _folder.Write(
            "rule.md",
            File.ReadAllBytes(
                Path.Combine(ClassKit.UseCases.Touring.DemoMaterial.Find(AppContext.BaseDirectory)!.Root, "rubrics", "term-grade.md")
            )
        );
        var term = _folder.Write(
            "term.md",
            "---\nroster: roster.csv\nrule: rule.md\n---\n\n# Autumn\n\n## Work\n\n| Work | Kind | Category | Out of | Marks | Resit | Second marker |\n|---|---|---|---|---|---|---|\n| Safety questions | typed marks | Written work | 12 | | | |\n"u8.ToArray()
        );

        var told = ArrangedWorks.Unknown(Library.OfPaths().At(list), [new CheckedItem(term, ContentKind.Term)]).ToList();

        Assert.Equal(weight, told.Select(one => (Weight?)one.Weight).SingleOrDefault());
        if (meant is not null)
            Assert.Contains($"Did you mean `{meant}`?", told[0].Expected, StringComparison.Ordinal);
    }
}
