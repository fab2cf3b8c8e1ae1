using ClassKit.Notes;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Checking.FirstDay;
using ClassKit.Wording.Notes;

namespace ClassKit.UseCases.Tests.Packs;

/// <summary>A lesson of 65 min in a period of 45, of which nothing can be moved or left out.</summary>
public class NoPlanTests
{
    [Fact]
    public void A_pack_without_a_plan_says_so_and_what_would_make_it_fit()
    {
        var library = new TeachingFolder().Change("class.md", "period: 120 min", "period: 45 min").Library;
        var notes = PackFiles
            .Write(BuildPack.Run(BuildPack.Read(library.At("lessons/milk-scones"), library.At("class.md")).Model!, Run.Unwatched).Model!)
            .Notes;

        var told = string.Join(' ', NoteWords.Of(Assert.Single(notes.OfType<Note.NoPlan>())));
        Assert.StartsWith("The lesson does not fit 45 min", told, StringComparison.Ordinal);
        Assert.Contains("It is 20 min short.", told, StringComparison.Ordinal);
        Assert.Contains("65 min", told, StringComparison.Ordinal);
    }
}
