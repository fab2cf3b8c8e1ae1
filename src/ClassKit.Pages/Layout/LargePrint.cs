using ClassKit.Exercises.Dealing;

namespace ClassKit.Pages.Layout;

/// <summary>The look of a page for a student who reads large print: a face with open shapes, printed in 18 points or more.</summary>
/// <remarks>
/// 18 points is what the American Council of the Blind asks of large print (Best Practices and Guidelines for Large Print Documents, 2011);
/// from memory.
/// </remarks>
internal static class LargePrint
{
    private const string Class = "large-print";

    /// <summary>True of a body whose classes <see cref="Of"/> made for large print.</summary>
    public static bool IsOf(string? classes) => classes is not null && classes.EndsWith(Class, StringComparison.Ordinal);

    /// <summary>The classes of a page's body.</summary>
    /// <param name="usual">Those that everybody's page has.</param>
    /// <param name="student">Whose page it is.</param>
    public static string Of(string usual, DealtStudent student) => student.LargePrint ? $"{usual} {Class}" : usual;
}
