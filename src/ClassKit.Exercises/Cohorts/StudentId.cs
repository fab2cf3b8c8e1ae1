using System.Text.RegularExpressions;
using AnyAscii;

namespace ClassKit.Exercises.Cohorts;

/// <summary>
/// What an id of a student may be: it is a key in files and becomes the name of some, on any system that an instructor may unpack them on.
/// </summary>
public static partial class StudentId
{
    /// <summary>The characters that an id may have at most.</summary>
    public const int Longest = 64;

    /// <summary>Why an id cannot be one; null for letters a to z in either case, digits, <c>-</c>, <c>_</c> and <c>.</c>, 1 to 64 of
    /// them, the first a letter or digit, the last no dot, that Windows does not keep for a device.</summary>
    /// <remarks>
    /// Source: Microsoft Learn, "Naming Files, Paths, and Namespaces": CON, PRN, AUX, NUL, COM0 to COM9 and LPT0 to LPT9, also with an
    /// extension; no name ends in a period.
    /// </remarks>
    public static StudentIdFault? Fault(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return !WellFormed().IsMatch(id) ? StudentIdFault.Form
            : Reserved().IsMatch(id) ? StudentIdFault.Device
            : null;
    }

    /// <summary>
    /// An id made of a name or an address, for a class without ids: <c>amara-osei</c>; empty where the name has no letter.
    /// </summary>
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
