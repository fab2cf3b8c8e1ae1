using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Randomness;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Summaries;
using ClassKit.PracticeBank.Tests.Fillings;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>
/// A class whose students share wrong methods that nobody listed and that the grader has no name for, over everything that ships. Who used
/// which is known, because it was made so.
/// </summary>
public sealed class SharedMethodsTests(ITestOutputHelper output)
{
    /// <summary>Three students share one method and two another, one is alone with a third, and two are right.</summary>
    private static readonly int?[] MethodOf = [0, 0, 0, 1, 1, 2, null, null];

    private static readonly Dictionary<(string Exercise, string Part), IReadOnlyList<TriedSlip>> Methods = Choose();

    [Fact]
    public void Every_shared_method_is_a_group_and_nobody_is_in_the_wrong_one()
    {
        var seats = Shipped.WholeClass;
        var judged = seats[0].Grader.Begin();
        foreach (var (number, seat) in seats.Index())
            judged.Add(
                seats[0]
                    .Grader.Judge(
                        seat.Return(
                            (desk, part) =>
                                part.IsNumber
                                    ? "=" + (Slip(number, desk.Exercise, part) is { } slip ? desk.Cells(slip.Formula) : desk.Cells(part))
                                    : null
                        )
                    )
            );
        var grades = seats[0].Grader.Settle(judged);
        var found = WrongMethods.In(grades);
        var (shared, missed, mixed) = (0, new List<string>(), new List<string>());
        foreach (var ((exercise, part), slips) in Methods)
        {
            // What happens to be right for somebody's numbers, or has a name after all, is in no group of these.
            List<(string Student, TriedSlip Slip)> unnamed =
            [
                .. grades
                    .Students.Index()
                    .SelectMany(student =>
                        student
                            .Item.Answers.Where(answer =>
                                (answer.Exercise.Id, answer.Part.Id) == (exercise, part)
                                && answer.Findings[0] is AnswerFinding.NearMiss or AnswerFinding.NotRight
                            )
                            .Where(_ => MethodOf[student.Index] is not null)
                            .Select(_ => (student.Item.Who.Id, slips[MethodOf[student.Index]!.Value]))
                    ),
            ];
            foreach (var group in found.Where(group => (group.Exercise.Id, group.Part.Id) == (exercise, part)))
            {
                List<TriedSlip> together =
                [
                    .. group.Students.Select(student => unnamed.FirstOrDefault(one => one.Student == student.Id).Slip),
                ];
                if (!together.TrueForAll(slip => slip is not null && slip.DoesWhat(together[0])))
                    mixed.Add($"{exercise}.{part}: {string.Join(", ", group.Students.Select(student => student.Id))}");
            }
            foreach (var method in unnamed.GroupBy(one => one.Slip).Where(method => method.Count() > 1))
            {
                shared++;
                if (
                    found.Count(group =>
                        (group.Exercise.Id, group.Part.Id) == (exercise, part)
                        && method.All(one => group.Students.Any(student => student.Id == one.Student))
                    ) != 1
                )
                    missed.Add($"{exercise}.{part}: {method.Key.Formula}");
            }
        }

        output.WriteLine($"{shared} shared methods in {Methods.Count} parts, {missed.Count} missed, {mixed.Count} groups mixed");
        Assert.True(shared > 100, $"Only {shared} methods were shared.");
        Assert.Empty(missed);
        Assert.Empty(mixed);
    }

    private static TriedSlip? Slip(int student, Exercise exercise, Part part) =>
        MethodOf[student] is { } method && Methods.TryGetValue((exercise.Id, part.Id), out var slips) ? slips[method] : null;

    /// <summary>
    /// For the last number that an exercise asks for, so that nothing follows from it: three methods of which each does something else.
    /// </summary>
    private static Dictionary<(string, string), IReadOnlyList<TriedSlip>> Choose()
    {
        var random = SeededDraws.For(21, "shared methods");
        var chosen = new Dictionary<(string, string), IReadOnlyList<TriedSlip>>();
        foreach (var exercise in Shipped.Exercises)
        {
            if (exercise.Parts.LastOrDefault(part => part.IsNumber) is not { } part)
                continue;
            List<TriedSlip> slips = [.. TriedSlip.Of(exercise, part, SlipOfThePen.HeldOut(exercise, part))];
            List<TriedSlip> three = [];
            for (; slips.Count > 0 && three.Count < MethodOf.Max() + 1; slips.RemoveAll(slip => three.Exists(slip.DoesWhat)))
                three.Add(slips[random.Below(slips.Count)]);
            if (three.Count == MethodOf.Max() + 1)
                chosen[(exercise.Id, part.Id)] = three;
        }
        return chosen;
    }
}
