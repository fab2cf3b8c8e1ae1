namespace ClassKit.Pages.Packs;

/// <summary>Who reads a page, as the contents of a pack tell the instructor.</summary>
internal static class ReadersText
{
    /// <summary>In a few words.</summary>
    public static string Of(Readers readers) =>
        readers switch
        {
            Readers.InstructorAlone => "you alone",
            Readers.WhoeverOrders => "you and whoever orders",
            Readers.Everybody => "everybody",
        };
}
