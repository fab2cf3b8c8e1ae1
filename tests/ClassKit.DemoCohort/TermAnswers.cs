using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Randomness;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Touring;

namespace ClassKit.DemoCohort;

/// <summary>
/// How an invented student answers the second set: mostly as they usually do, and now and then wrong by the seed, one of them more often
/// than not.
/// </summary>
public static class TermAnswers
{
    private const string Struggling = "bao-nguyen";

    /// <summary>A student's answers, always the same for the same student and occasion.</summary>
    /// <param name="dealt">What was dealt.</param>
    /// <param name="seat">To the student.</param>
    /// <param name="when">The occasion.</param>
    public static IReadOnlyList<RehearsedAnswer> Of(DealtClass dealt, DealtStudent seat, string when)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(seat);
        var layout = dealt.LayOut();
        var usually = DemoClass.Students.Single(student => student.Id == seat.Who.Id).Usually;
        return
        [
            .. dealt
                .ExercisesOf(seat)
                .SelectMany(exercise =>
                {
                    var sheet = new AnswerSheet(layout.Of(exercise.Id), seat);
                    return exercise
                        .Parts.Select(part => sheet.Answer(part, Way(seat.Who.Id, $"{exercise.Id}.{part.Id}", when, usually)))
                        .ToList();
                }),
        ];
    }

    private static AnswerWay Way(string student, string part, string when, AnswerWay usually)
    {
        var chance =
            SeededDraws.For(DemoMaterial.Seed, when, student, part).Fraction() / (student == Struggling && when != "resit" ? 4 : 1);
        return chance switch
        {
            < 0.12 => AnswerWay.WrongTurn,
            < 0.17 => AnswerWay.Slip,
            < 0.2 => AnswerWay.Blank,
            _ => usually,
        };
    }
}
