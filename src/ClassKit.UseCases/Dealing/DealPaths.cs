using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Dealing;

/// <summary>Where what dealing takes lies on disk.</summary>
/// <param name="Folder">The lesson's folder, or one of exercises.</param>
/// <param name="Roster">The students.</param>
/// <param name="Wish">What is wanted of the deal.</param>
public sealed record DealPaths(string Folder, string Roster, DealWish Wish)
{
    /// <summary>The class profile, for the class's name and time zone; null for none.</summary>
    public string? ClassFile { get; init; }

    /// <summary>The output folder: a deal that it holds is added to and never replaced. Null for a new one.</summary>
    public string? Into { get; init; }

    /// <summary>All that dealing takes, or everything that is wrong with it.</summary>
    public Reading<DealRequest> Read()
    {
        var before = EarlierDeal.In(Into);
        if (!before.Succeeded) return new(null, before.Problems);
        var library = Library.OfPaths();
        var roster = ClassList.Read(library.At(Roster), ClassFile is null ? null : library.At(ClassFile));
        var set = PracticeSet.Read(library.At(Folder), Wish.Set, Wish.Seed);
        return set.Succeeded && roster.Succeeded
            ? new(new(set.Model, roster.Model, Wish) { Earlier = before.Model }, [])
            : new(null, [.. set.Problems, .. roster.Problems]);
    }

    /// <summary>The files of the deal.</summary>
    public static Produced Write(DealMade deal) => new(DealFiles.Of(deal), DealNotes.Of(deal), []) { Open = [DealFiles.FirstToOpen(deal.Dealt)], Remedies = deal.Request.Wish.Due is null ? [] : DueRemedies.Of(deal.Dealt.Due) };
}
