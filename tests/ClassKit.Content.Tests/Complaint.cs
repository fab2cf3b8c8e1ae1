namespace ClassKit.Content.Tests;

/// <summary>Asserts what a message says: its place, what was found and what to do.</summary>
internal static class Complaint
{
    public static void Only<T>(Reading<T> reading, int? line, string found, string remedy)
        where T : class
    {
        Assert.False(reading.Succeeded);
        Assert.Null(reading.Model);
        One(Assert.Single(reading.Problems), line, found, remedy);
    }

    public static void One(Diagnostic problem, int? line, string found, string remedy)
    {
        Assert.Equal(line, problem.Line);
        Assert.Contains(found, problem.Found, StringComparison.Ordinal);
        Assert.Contains(remedy, problem.Expected, StringComparison.Ordinal);
    }

    /// <summary>A text with one thing in it changed, which must be there.</summary>
    public static string Break(string text, string find, string replacement)
    {
        Assert.Contains(find, text, StringComparison.Ordinal);
        var at = text.IndexOf(find, StringComparison.Ordinal);
        return text[..at] + replacement + text[(at + find.Length)..];
    }
}
