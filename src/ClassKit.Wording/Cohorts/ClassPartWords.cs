using System.Globalization;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Wording.Cohorts;

/// <summary>Which students of a large class a file is about.</summary>
public static class ClassPartWords
{
    /// <summary>Such as “students 251 to 500 of 10000”.</summary>
    public static string Of(ClassPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return string.Create(CultureInfo.InvariantCulture, $"students {part.First} to {part.Last} of {part.Students}");
    }

    /// <summary>What a class is called in a file about some of it: its name with them, or as it is where the file is about all.</summary>
    public static string Cohort(string cohort, ClassPart part)
    {
        ArgumentNullException.ThrowIfNull(cohort);
        ArgumentNullException.ThrowIfNull(part);
        return part.IsWhole ? cohort
            : cohort.Length == 0 ? $"Class, {Of(part)}"
            : $"{cohort}, {Of(part)}";
    }

    /// <summary>A title, with the students where the file is about some of the class.</summary>
    public static string Title(string title, ClassPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.IsWhole ? title : $"{title}, {Of(part)}";
    }
}
