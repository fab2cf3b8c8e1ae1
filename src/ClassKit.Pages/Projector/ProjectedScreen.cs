using Microsoft.AspNetCore.Components;

namespace ClassKit.Pages.Projector;

/// <summary>One screen before it is numbered.</summary>
/// <param name="Kicker">What kind of thing is told.</param>
/// <param name="Heading">The idea.</param>
/// <param name="Body">What stands below it; null for nothing.</param>
internal sealed record ProjectedScreen(string Kicker, string Heading, RenderFragment? Body);
