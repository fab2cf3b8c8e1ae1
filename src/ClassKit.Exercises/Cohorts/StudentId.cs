using System.Text.RegularExpressions;
using AnyAscii;

namespace ClassKit.Exercises.Cohorts;

/// <summary>What an id of a student may be: it is a key in files and becomes the name of some, on any system that an instructor may unpack them on.</summary>
public static partial class StudentId
{
    /// <summary>The characters that an id may have at most.</summary>
    public const int Longest = 64;

    private const string Form = "Use letters a to z, digits, - _ and ., beginning with a letter or digit, not ending with a dot, and at most 64 of them: it becomes a file's name.";

    private const string ReservedRemedy = "Windows keeps that name for a device and cannot have a file of it: add something to it, such as a class or a number behind a -.";

    /// <summary>What to do about an id that cannot be one, in words for the person who wrote it; null for letters a to z in either case, digits, <c>-</c>, <c>_</c> and <c>.</c>, 1 to 64 of
    /// them, the first a letter or digit, the last no dot, that Windows does not keep for a device.</summary>
    /// <remarks>Source: Microsoft Learn, "Naming Files, Paths, and Namespaces": CON, PRN, AUX, NUL, COM0 to COM9 and LPT0 to LPT9, also with an extension; no name ends in a period.</remarks>
    public static string? Remedy(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return !WellFormed().IsMatch(id) ? Form : Reserved().IsMatch(id) ? ReservedRemedy : null;
    }

    /// <summary>An id made of a name or an address, for a class without ids: <c>amara-osei</c>; empty where the name has no letter.</summary>
    public static string Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var words = Apart().Replace(name.Transliterate().ToLowerInvariant(), "-").Trim('-');
        return words.Length > Longest ? words[..Longest].Trim('-') : words;
    }

    [GeneratedRegex(@"\A[A-Za-z0-9](?:[A-Za-z0-9._-]{0,62}[A-Za-z0-9_-])?\z")]
    private static partial Regex WellFormed();

    [GeneratedRegex(@"\A(con|prn|aux|nul|com[0-9]|lpt[0-9])(\..*)?\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Reserved();

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex Apart();
}
