using ClassKit.Pages.Packs;

namespace ClassKit.Desk.Prep;

/// <summary>For whom the pages of a pack are, as a heading.</summary>
internal static class ReaderWords
{
    public static string Of(Readers readers) =>
        readers switch
        {
            Readers.InstructorAlone => "For you alone",
            Readers.WhoeverOrders => "For whoever orders",
            Readers.Everybody => "For everybody",
        };
}
