using ClassKit.Exercises.Cohorts;

namespace ClassKit.Grading.Findings.Quoting;

/// <summary>
/// What the students, files and typed texts of a fact are called instead, so that the same fact can be told without names.
/// </summary>
public interface IDisguise
{
    /// <summary>Whom to speak of instead of a student.</summary>
    Student OfStudent(Student student);

    /// <summary>What to call a returned file instead.</summary>
    string OfFile(string path);

    /// <summary>What to write instead of a typed text.</summary>
    string OfTyped(string typed);
}
