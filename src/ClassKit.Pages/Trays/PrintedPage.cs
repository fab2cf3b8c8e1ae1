using ClassKit.Lessons.Packs;
using ClassKit.Pages.ClassPrints;
using ClassKit.Pages.Observations;
using ClassKit.Pages.Packs;

namespace ClassKit.Pages.Trays;

/// <summary>A page as it is printed for a class: one of a lesson pack, or a file with everybody's sheets in it.</summary>
/// <param name="Name">How it is asked for, other than all others of its tray.</param>
/// <param name="Title">What it is called.</param>
/// <param name="For">For whom it is, in words.</param>
/// <param name="Html">The text of its file.</param>
/// <param name="Copies">How many; 1 or more.</param>
/// <param name="Sides">Printed sides of one copy; 1 or more. See <see cref="PageSides"/>.</param>
/// <param name="Parts">Parts that are somebody else's each, or are handed round one by one, and so begin on a sheet of their own; 1 for a
/// page that stays together.</param>
public sealed record PrintedPage(string Name, string Title, string For, string Html, int Copies, int Sides, int Parts)
{
    /// <summary>Who it comes out for: what is for students first, then what is for teams.</summary>
    public PrintedFor PrintedFor { get; init; }

    /// <summary>The sides of each part, where they are not one each; empty where they are.</summary>
    public IReadOnlyList<int> SidesOfParts { get; init; } = [];

    /// <summary>Sheets of one copy on both sides, of a file that has its blank sides in it; 0 for one that has none.</summary>
    public int SheetsAsMade { get; init; }

    /// <summary>Sheets of paper of one copy.</summary>
    /// <param name="bothSides">True to print on both sides.</param>
    public int SheetsEach(bool bothSides) =>
        !bothSides ? Sides
        : SheetsAsMade > 0 ? SheetsAsMade
        : SidesOfParts.Count > 0 ? SidesOfParts.Sum(sides => (sides + 1) / 2)
        : Parts > 1 ? Parts
        : (Sides + 1) / 2;

    /// <summary>Sheets of paper of all copies.</summary>
    /// <param name="bothSides">True to print on both sides.</param>
    public int Sheets(bool bothSides) => Copies * SheetsEach(bothSides);

    /// <summary>A page of a pack as often as the class needs it.</summary>
    public static PrintedPage Of(LessonPack pack, PackEntry entry, string html)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(entry);
        var isOfAllTeams = entry == PackContents.Observations && TeamSheet.IsForEach(pack);
        var copies = entry.PrintedFor switch
        {
            PrintedFor.Class => 1,
            PrintedFor.EachTeam => isOfAllTeams ? 1 : pack.Class.Teams,
            PrintedFor.EachStudent => pack.Class.Students,
        };
        return new(
            entry.FileName,
            entry.Title,
            PrintedForWords.Of(entry),
            html,
            copies,
            PageSides.Of(pack, entry, html),
            PartsOf(pack, entry)
        )
        {
            PrintedFor = entry.PrintedFor,
            SheetsAsMade = isOfAllTeams ? pack.Class.Teams : 0,
            SidesOfParts = entry == PackContents.RunSheets ? PageSides.OfRunSheets(pack) : [],
        };
    }

    /// <summary>A file with everybody's sheets in it, once.</summary>
    /// <param name="name">How it is asked for.</param>
    /// <param name="title">What it is called.</param>
    /// <param name="html">The text of the file.</param>
    /// <param name="printed">What it takes.</param>
    public static PrintedPage Of(string name, string title, string html, PrintedClass printed)
    {
        ArgumentNullException.ThrowIfNull(printed);
        return new(name, title, "each student, by name", html, 1, printed.Sides, 1)
        {
            PrintedFor = PrintedFor.EachStudent,
            SheetsAsMade = printed.Sheets,
        };
    }

    private static int PartsOf(LessonPack pack, PackEntry entry) =>
        entry == PackContents.Cards ? pack.Cards.Count + pack.Controls.Count
        : entry == PackContents.RunSheets ? pack.Class.Teams + 1
        : 1;
}
