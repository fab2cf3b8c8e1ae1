using ClassKit.Exercises.Cohorts;

namespace ClassKit.Wording.Cohorts;

/// <summary>What to do about an id that cannot be a student's.</summary>
public static class StudentIdWords
{
    /// <summary>A sentence to the person who wrote it.</summary>
    public static string Of(StudentIdFault fault) =>
        fault switch
        {
            StudentIdFault.Form =>
                "Use letters a to z, digits, - _ and ., beginning with a letter or digit, not ending with a dot, and at most 64 of them: it becomes a file's name.",
            StudentIdFault.Device =>
                "Windows keeps that name for a device and cannot have a file of it: add something to it, such as a class or a number behind a -.",
        };
}
