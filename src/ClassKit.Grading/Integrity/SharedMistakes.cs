using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Integrity;

/// <summary>
/// Two students whose wrong answers stand in the cells character for character alike, more often than the class explains.
/// </summary>
/// <remarks>
/// Chance: of the parts that both got wrong, each is alike as often as the rest of the class, wrong at the same part, wrote the same thing
/// (half a student is added to each side of that count, after Jeffreys, since nobody having written it does not make it impossible). How
/// many of them are alike by chance is then a sum of independent draws of unequal probability, whose tail is worked out exactly, and
/// multiplied by the number of pairs in the class. Known wrong methods are left out: they are what a class shares by being taught together.
/// Of a large class only those pairs are looked at whose alike answers could together be rare enough: that all of them are alike is never
/// likelier than that as many are.
/// </remarks>
internal static class SharedMistakes
{
    public static IEnumerable<(Student Student, Flag Flag)> In(ClassGrades grades)
    {
        var students = grades.Students.Where(student => student.Status == GradeStatus.Graded).Select(student => student.Who).ToList();
        var written = grades.Students.Where(student => student.Status == GradeStatus.Graded).Select(Written).ToList();
        var counts = new WrittenCounts(written);
        var pairs = (double)students.Count * (students.Count - 1) / 2;
        foreach (var (one, other) in new RarePairs(written, text => counts.Alike(text.Part, text.Text), IntegrityFacts.Line / pairs).All())
        {
            var both = written[one].Keys.Intersect(written[other].Keys).ToList();
            var alike = both.Where(part => written[one][part] == written[other][part]).ToList();
            if (alike.Count < 2)
                continue;
            var chances = both.Select(part =>
                    alike.Contains(part) ? counts.Alike(part, written[one][part]) : counts.Apart(part, written[one][part])
                )
                .ToList();
            var expected = Tail(chances, alike.Count) * students.Count * (students.Count - 1) / 2;
            if (expected > IntegrityFacts.Line)
                continue;
            yield return (students[one], new Flag.SharedMistakes(students[other], alike, both.Count, expected));
            yield return (students[other], new Flag.SharedMistakes(students[one], alike, both.Count, expected));
        }
    }

    /// <summary>
    /// What stands in the cells of wrong answers, by part. Numbers that were typed differ by variant and are compared as numbers.
    /// </summary>
    private static Dictionary<(string Exercise, string Part), string> Written(StudentGrade student) =>
        IntegrityFacts
            .Wrong(student)
            // Of a few letters many choose the same.
            .Where(answer => answer.Outcome == Outcome.Incorrect && answer.Part.IsNumber)
            .ToDictionary(
                answer => (answer.Exercise.Id, answer.Part.Id),
                answer => answer.Formula is { } formula ? Canonical(formula) : answer.Value.ToString()
            );

    private static string Canonical(string formula) => CellFormula.Parse(formula) is { Formula: { } parsed } ? parsed.ToString() : formula;

    /// <summary>The probability that at least so many of independent events happen.</summary>
    private static double Tail(List<double> chances, int least)
    {
        var exactly = new double[chances.Count + 1];
        exactly[0] = 1;
        foreach (var chance in chances)
        {
            for (var count = chances.Count; count > 0; count--)
                exactly[count] = exactly[count] * (1 - chance) + exactly[count - 1] * chance;
            exactly[0] *= 1 - chance;
        }
        return exactly.Skip(least).Sum();
    }
}
