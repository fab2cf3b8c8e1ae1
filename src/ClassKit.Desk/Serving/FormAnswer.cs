namespace ClassKit.Desk.Serving;

/// <summary>A page that answered a form.</summary>
/// <param name="Status">How the form went, as a status of HTTP.</param>
/// <param name="Html">The page.</param>
/// <param name="IsSheet">True for a page that was made to stand alone.</param>
internal sealed record FormAnswer(int Status, string Html, bool IsSheet);
