using System.Text.RegularExpressions;

namespace ClassKit.Exercises.Cohorts;

/// <summary>What an id of a student may be: it is a key in files and becomes the name of some, on any system that an instructor may unpack them on.</summary>
public static partial class StudentId
{
    private const string Form = "Use lower-case letters a to z, digits, - and _, beginning with a letter or digit and at most 64 of them: it becomes a file's name.";

    private const string ReservedRemedy = "Windows keeps that name for a device and cannot have a file of it: add something to it, such as a class or a number behind a -.";

    /// <summary>What to do about an id that cannot be one, in words for the person who wrote it; null for lower-case letters, digits, <c>-</c> and <c>_</c>, 1 to 64 of them, the first a
    /// letter or digit, that Windows does not keep for a device.</summary>
    /// <remarks>Source: Microsoft Learn, "Naming Files, Paths, and Namespaces": CON, PRN, AUX, NUL, COM0 to COM9 and LPT0 to LPT9, also with an extension.</remarks>
    public static string? Remedy(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return !WellFormed().IsMatch(id) ? Form : Reserved().IsMatch(id) ? ReservedRemedy : null;
    }

    [GeneratedRegex(@"\A[a-z0-9][a-z0-9_-]{0,63}\z")]
    private static partial Regex WellFormed();

    [GeneratedRegex(@"\A(con|prn|aux|nul|com[0-9]|lpt[0-9])\z")]
    private static partial Regex Reserved();
}
