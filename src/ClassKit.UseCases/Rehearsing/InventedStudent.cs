using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Randomness;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>A student who does not exist.</summary>
/// <param name="Student">Name and id.</param>
/// <param name="Ability">How likely a part is answered with the right method, 0 to 1.</param>
internal sealed record InventedStudent(Student Student, double Ability)
{
    // Rates of what goes wrong are working figures, common practice, no source; they add up to 1.
    private static readonly (AnswerWay Way, double Share)[] WhenUnsure =
    [
        (AnswerWay.WrongTurn, 0.30),
        (AnswerWay.WrongTurnTyped, 0.07),
        (AnswerWay.UnlistedTurn, 0.08),
        (AnswerWay.Slip, 0.13),
        (AnswerWay.Typed, 0.13),
        (AnswerWay.Blank, 0.12),
        (AnswerWay.PartlyTyped, 0.05),
        (AnswerWay.TypedWithUnit, 0.03),
        (AnswerWay.DivisionByZero, 0.02),
        (AnswerWay.Words, 0.02),
        (AnswerWay.HardCoded, 0.02),
        (AnswerWay.Filler, 0.02),
        (AnswerWay.LeftAsText, 0.01),
    ];

    private const double ShareInOneGo = 0.1;

    /// <summary>
    /// How long this student takes, as a multiple of the minutes that an exercise states: those are meant for the middle of a class.
    /// </summary>
    /// <remarks>
    /// Three quarters for one who is sure of nearly everything, five quarters for one who is sure of a third. A working figure, common
    /// practice, no source.
    /// </remarks>
    public double Pace => 1 - ((Ability - InventedClass.MiddleAbility) * 5 / 6);

    /// <summary>How this student answers a part.</summary>
    public AnswerWay Choose(SeededDraws random)
    {
        if (random.Fraction() < Ability)
            return random.Fraction() < ShareInOneGo ? AnswerWay.OneGo : AnswerWay.Cells;
        var left = random.Fraction();
        foreach (var (way, share) in WhenUnsure)
        {
            if (left < share)
                return way;
            left -= share;
        }
        return AnswerWay.Blank;
    }
}
