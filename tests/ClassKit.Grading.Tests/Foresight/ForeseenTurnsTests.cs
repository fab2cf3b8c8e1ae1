using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Foresight;

namespace ClassKit.Grading.Tests.Foresight;

public sealed class ForeseenTurnsTests
{
    /// <summary>Water in a dough, with the salt so little that a tolerance of 10 g hides whether it was taken off.</summary>
    private static Exercise Dough(double tolerance, params IReadOnlyList<Misconception> listed) =>
        DoughTemperatureExercise.Exercise with
        {
            Givens =
            [
                new("dough", "Dough", "g", 1000, 2000, 50),
                new("flour", "Flour", "g", 500, 900, 50),
                new("salt", "Salt", "g", 8, 9, 1),
            ],
            Constraints = [],
            Parts =
            [
                new(
                    "water",
                    "How much water is in it?",
                    CellFormula.Of("=dough-flour-salt"),
                    "g",
                    Tolerance.Absolute(tolerance),
                    1,
                    true,
                    listed
                ),
            ],
        };

    [Fact]
    public void A_term_left_out_that_the_tolerance_hides_is_warned_of()
    {
        Assert.Contains(ForeseenTurns.Of(Dough(10)), turn =>
            turn.IsHidden && turn.Hidden == 1 && turn.Formula.ToString() == "=dough-flour"
        );
        Assert.Contains(ForeseenTurns.Of(Dough(2)), turn =>
            !turn.IsHidden && turn.Hidden == 0 && turn.Formula.ToString() == "=dough-flour"
        );
    }

    [Fact]
    public void What_is_listed_is_not_proposed() =>
        Assert.DoesNotContain(
            ForeseenTurns.Of(Dough(2, new Misconception("salt_forgotten", CellFormula.Of("=dough-flour"), "Take the salt off as well."))),
            turn => turn.Formula.ToString() == "=dough-flour"
        );
}
