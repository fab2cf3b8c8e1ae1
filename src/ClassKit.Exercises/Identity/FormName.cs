namespace ClassKit.Exercises.Identity;

/// <summary>
/// What a saved form calls itself for people: the title of what was filled in, and behind it the class that it was made for.
/// </summary>
public static class FormName
{
    /// <summary>Pages and what is typed at the desk have put these between the two.</summary>
    private static readonly string[] Between = [" · ", " – "];

    /// <summary>The class that a form was made for; empty where it had no name, null where the form is of something else.</summary>
    /// <param name="called">What the form calls itself; null where it does not say.</param>
    /// <param name="title">The title of what is filled in.</param>
    public static string? ClassIn(string? called, string title)
    {
        if (called is null || !called.StartsWith(title, StringComparison.Ordinal))
            return null;
        var rest = called[title.Length..];
        return rest.Length == 0
            ? ""
            : Between
                .Where(between => rest.StartsWith(between, StringComparison.Ordinal))
                .Select(between => rest[between.Length..])
                .FirstOrDefault();
    }
}
