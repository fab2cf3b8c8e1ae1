using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Randomness;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.PracticeBank.Tests.Fillings;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>Students who make slips over everything that ships, graded.</summary>
internal static class RehearsedSlips
{
    private const int Rounds = 5;

    /// <summary>
    /// One part of every exercise has a slip, another one each time and with every student; what stands before it is right.
    /// </summary>
    public static IReadOnlyList<Tried> Rehearse(Func<Exercise, Part, IEnumerable<SlipOfThePen>> make, string purpose, bool isTyped)
    {
        var slips = Shipped
            .Exercises.SelectMany(exercise => exercise.Parts.Where(part => part.IsNumber).Select(part => (exercise, part)))
            .ToDictionary(at => (at.exercise.Id, at.part.Id), at => TriedSlip.Of(at.exercise, at.part, make(at.exercise, at.part)));
        var random = SeededDraws.For(20, purpose);
        var tried = new List<Tried>();
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var seat in Shipped.SeatsOfTwo)
            {
                var made = new Dictionary<(string, string), TriedSlip>();
                foreach (var exercise in Shipped.Exercises)
                {
                    var parts = exercise.Parts.Where(part => part.IsNumber && slips[(exercise.Id, part.Id)].Count > 0).ToList();
                    if (parts.Count == 0)
                        continue;
                    var of = slips[(exercise.Id, parts[random.Below(parts.Count)].Id)];
                    var slip = of[random.Below(of.Count)];
                    made[(exercise.Id, slip.Part.Id)] = slip;
                }
                var desks = new Dictionary<string, Desk>();
                var grades = seat.Grade(
                    (desk, part) =>
                        (desks[desk.Exercise.Id] = desk) is not null && made.TryGetValue((desk.Exercise.Id, part.Id), out var slip)
                            ? isTyped
                                ? Typed(slip.Value(desk.Givens, desk.Right)!.Value)
                                : "=" + desk.Cells(slip.Formula)
                            : part.IsNumber
                                ? "=" + desk.Cells(part)
                                : null
                );
                tried.AddRange(
                    grades
                        .Where(grade => made.ContainsKey((grade.Exercise.Id, grade.Part.Id)))
                        // What happens to be right for the numbers dealt is no slip there.
                        .Where(grade => !grade.Value.IsNumber || !grade.Part.Tolerance.Accepts(grade.Expected, grade.Value.Number))
                        .Select(grade => new Tried(made[(grade.Exercise.Id, grade.Part.Id)], grade, desks[grade.Exercise.Id]))
                );
            }
        }
        return tried;
    }

    /// <summary>As people write a calculator's display down: two decimals, or four digits where it is less than ten.</summary>
    private static double Typed(double number) =>
        number == 0
            ? 0
            : Math.Round(number, Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(number))), 2, 9), MidpointRounding.AwayFromZero);

    public sealed record Tried(TriedSlip Slip, AnswerGrade Grade, Desk Desk)
    {
        public override string ToString() =>
            $"{Grade.Exercise.Id}.{Grade.Part.Id} {Slip.Part.Key} {Slip.Slip.Kind} {Slip.Formula}: {Grade.Outcome} {(Grade.Findings[0] is AnswerFinding.NearMiss miss ? $"{miss.Edits[0].GetType().Name} {miss.Formula}" : Grade.Findings[0])} {Grade.Value} for {Grade.Expected}";
    }
}
