using ClassKit.Pages.Packs;

namespace ClassKit.Pages.Trays;

/// <summary>For whom a page is printed, in words.</summary>
public static class PrintedForWords
{
    /// <summary>Such as “each student”.</summary>
    public static string Of(PackEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.PrintedFor switch
        {
            PrintedFor.EachStudent => "each student",
            PrintedFor.EachTeam => "each team",
            PrintedFor.Class when entry == PackContents.RunSheets => "you, and a sheet for each team",
            PrintedFor.Class => entry.Readers == Readers.Everybody ? "the class" : ReadersText.Of(entry.Readers),
        };
    }
}
