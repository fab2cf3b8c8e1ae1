using ClassKit.UseCases.Rehearsing;

namespace ClassKit.DemoCohort;

/// <summary>What one invented student does with the workbook dealt.</summary>
/// <param name="Id">On the roster.</param>
/// <param name="File">What the returned file is called; null for a student who returns nothing.</param>
/// <param name="Through">The program that the file passes through before it comes back.</param>
/// <param name="Usually">How this student answers where nothing else is said.</param>
/// <param name="Answers">The parts answered in another way, as <c>exercise.part</c>, with which misconception or given is meant.</param>
/// <param name="Mishap">What else happens to the file.</param>
public sealed record DemoStudent(
    string Id,
    string? File,
    OtherProgram Through,
    AnswerWay Usually,
    IReadOnlyDictionary<string, (AnswerWay Way, int Pick)> Answers,
    Mishap Mishap = Mishap.None
);
