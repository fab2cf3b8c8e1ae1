using Microsoft.AspNetCore.Components;

namespace ClassKit.Pages.Projector;

/// <summary>One screen before it is numbered.</summary>
/// <param name="Kicker">What kind of thing is told.</param>
/// <param name="Heading">The idea.</param>
/// <param name="Body">What stands below it; null for nothing.</param>
/// <param name="Text">The words of a body that is text alone, by whose length its type is set; empty where it is a table or a
/// chart.</param>
internal sealed record ProjectedScreen(string Kicker, string Heading, RenderFragment? Body, string Text = "")
{
    /// <summary>As large as the room allows: an idea alone fills its screen, few words are larger than many.</summary>
    public string Size =>
        (Body, Text.Length) switch
        {
            (null, _) => Heading.Length switch
            {
                <= 75 => "alone",
                <= 120 => "alone long",
                _ => "",
            },
            (_, 0) => "",
            (_, <= 100) => "few",
            (_, <= 210) => "some",
            _ => "",
        };
}
