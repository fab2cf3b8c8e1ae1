namespace ClassKit.Pages;

/// <summary>One page as a file.</summary>
/// <param name="FileName">What the other pages of its set call it in their links.</param>
/// <param name="Html">The file's text.</param>
public sealed record HtmlPage(string FileName, string Html);
