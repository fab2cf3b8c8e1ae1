using AnyAscii;

namespace ClassKit.Exercises.Cohorts;

/// <summary>
/// Tells students apart whose names are the same, or would be taken for the same: accents, capitals and signs are easily lost.
/// </summary>
public static class Namesakes
{
    /// <summary>
    /// The students, with the id behind each name that is not the only one of its kind; who was told apart before stays so.
    /// </summary>
    public static IReadOnlyList<Student> ToldApart(IReadOnlyList<Student> students)
    {
        ArgumentNullException.ThrowIfNull(students);
        var shared = students
            .GroupBy(student => Folded(student.Name), StringComparer.Ordinal)
            .Where(name => name.Skip(1).Any())
            .SelectMany(name => name)
            .ToHashSet();
        return [.. students.Select(student => shared.Contains(student) && student.Shown == student.Name ? WithId(student) : student)];
    }

    /// <summary>The student with the id behind the name, as somebody who shares it in the class.</summary>
    public static Student WithId(Student student)
    {
        ArgumentNullException.ThrowIfNull(student);
        return student with { Shown = $"{student.Name} ({student.Id})" };
    }

    private static string Folded(string name) =>
        string.Concat(name.Transliterate().Where(char.IsAsciiLetterOrDigit)).ToLowerInvariant() is { Length: > 0 } plain ? plain : name;
}
