namespace ClassKit.Pages.Packs;

/// <summary>One page of a lesson pack.</summary>
/// <param name="FileName">The file beside the others.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Contents">What stands in it.</param>
/// <param name="Use">What to do with it.</param>
/// <param name="Readers">Who may see it.</param>
public sealed record PackEntry(string FileName, string Title, string Contents, string Use, Readers Readers)
{
    /// <summary>For whom it is printed.</summary>
    public PrintedFor PrintedFor { get; init; }

    /// <summary>What kind of page it is, above a heading of its own.</summary>
    public string Kind => Contents.Length == 0 ? "Lesson pack" : Title;
}
