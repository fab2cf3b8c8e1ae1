using ClassKit.Lessons.Packs;
using ClassKit.Pages.Packs;

namespace ClassKit.Pages.Trays;

/// <summary>A page of a lesson pack as it is printed for a class.</summary>
/// <param name="Entry">What it is.</param>
/// <param name="Html">The text of its file.</param>
/// <param name="Copies">How many; 1 or more.</param>
/// <param name="Sides">Printed sides of one copy; 1 or more. See <see cref="PageSides"/>.</param>
/// <param name="Parts">Parts that are somebody else's each, or are handed round one by one, and so begin on a sheet of their own; 1 for a page that stays together.</param>
public sealed record PrintedPage(PackEntry Entry, string Html, int Copies, int Sides, int Parts)
{
    /// <summary>Sheets of paper of one copy.</summary>
    /// <param name="bothSides">True to print on both sides.</param>
    public int SheetsEach(bool bothSides) => !bothSides ? Sides : Parts > 1 ? Parts : (Sides + 1) / 2;

    /// <summary>Sheets of paper of all copies.</summary>
    /// <param name="bothSides">True to print on both sides.</param>
    public int Sheets(bool bothSides) => Copies * SheetsEach(bothSides);

    /// <summary>A page as often as the class needs it.</summary>
    public static PrintedPage Of(LessonPack pack, PackEntry entry, string html)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(entry);
        var copies = entry.PrintedFor switch
        {
            PrintedFor.Class => 1,
            PrintedFor.EachTeam => pack.Class.Teams,
            PrintedFor.EachStudent => pack.Class.Students,
        };
        return new(entry, html, copies, PageSides.Of(pack, entry, html), PartsOf(pack, entry));
    }

    private static int PartsOf(LessonPack pack, PackEntry entry) =>
        entry == PackContents.Cards ? pack.Cards.Count + pack.Controls.Count
        : entry == PackContents.RunSheets ? pack.Class.Teams + 1
        : 1;
}
