using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.Tests;

/// <summary>Asserts what a message says: its place, what was found and what to do.</summary>
internal static class Complaint
{
    /// <summary>As many problems as said, among them one with these words, and a model only where there is none.</summary>
    public static void Among<T>(Reading<T> reading, int problems, int? line, string found, string remedy)
        where T : class
    {
        Assert.Null(reading.Model);
        Assert.True(problems == reading.Problems.Count, string.Join('\n', reading.Problems));
        var problem = reading.Problems.FirstOrDefault(problem => problem.Found.Contains(found, StringComparison.Ordinal));
        Assert.True(problem is not null, string.Join('\n', reading.Problems));
        One(problem, line, found, remedy);
    }

    public static void Only<T>(Reading<T> reading, int? line, string found, string remedy)
        where T : class
    {
        Assert.False(reading.Succeeded);
        Among(reading, 1, line, found, remedy);
    }

    public static void One(Diagnostic problem, int? line, string found, string remedy)
    {
        Assert.Equal(line, problem.Line);
        Assert.Contains(found, problem.Found, StringComparison.Ordinal);
        Assert.Contains(remedy, problem.Expected, StringComparison.Ordinal);
    }

    /// <summary>The line, counted from 1, on which a text first stands in a file.</summary>
    public static int LineOf(string file, string text)
    {
        var at = file.IndexOf(text, StringComparison.Ordinal);
        Assert.True(at >= 0, $"`{text}` is not in the file.");
        return file[..at].Count(character => character == '\n') + 1;
    }

    /// <summary>
    /// Where a mistake is to be reported: nowhere for null, at the change itself for an empty text, else where the text stands.
    /// </summary>
    public static int? LineFor(string? at, string sound, string find, string broken) =>
        at switch
        {
            null => null,
            "" => LineOf(sound, find),
            _ => LineOf(broken, at),
        };

    /// <summary>A text with one thing in it changed, which must be there.</summary>
    public static string Break(string text, string find, string replacement)
    {
        Assert.Contains(find, text, StringComparison.Ordinal);
        var at = text.IndexOf(find, StringComparison.Ordinal);
        return text[..at] + replacement + text[(at + find.Length)..];
    }
}
