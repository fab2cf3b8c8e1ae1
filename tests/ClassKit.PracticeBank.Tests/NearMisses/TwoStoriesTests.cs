using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Results;
using ClassKit.PracticeBank.Tests.Fillings;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>
/// Two slips that come to one number as long as what stands before is right: instant yeast is what 0.33 makes of fresh, so that who divides
/// it by 0.33 twice comes to what who began from the fresh yeast comes to.
/// </summary>
public sealed class TwoStoriesTests
{
    private const string Twice = "=instant/instant_factor/instant_factor*dry_factor";
    private const string FromTheFirst = "=fresh/instant_factor*dry_factor";

    [Fact]
    public void A_typed_number_that_both_give_is_named_after_neither()
    {
        foreach (var seat in Shipped.SeatsOfTwo)
            Assert.IsType<AnswerFinding.NotRight>(
                Judged(seat, desk => Math.Round(desk.Right["fresh"] / 0.33 * 0.4, 3, MidpointRounding.AwayFromZero)).Findings[0]
            );
    }

    [Theory]
    [InlineData(Twice, typeof(KeyEdit.CountedTwice))]
    [InlineData(FromTheFirst, typeof(KeyEdit.OtherCell))]
    public void A_formula_is_named_after_the_one_that_it_is(string formula, Type edit)
    {
        foreach (var seat in Shipped.SeatsOfTwo)
            Assert.IsType(
                edit,
                Assert.Single(
                    Assert
                        .IsType<AnswerFinding.NearMiss>(
                            Judged(seat, desk => "=" + desk.Cells(CellFormulas.Formulas.CellFormula.Of(formula))).Findings[0]
                        )
                        .Edits
                )
            );
    }

    private static AnswerGrade Judged(Seat seat, Func<Desk, object> answer) =>
        seat.Grade(
                (desk, part) =>
                    part.Id == "active_dry" && desk.Exercise.Parts.Any(other => other.Id == "instant") ? answer(desk)
                    : part.IsNumber ? "=" + desk.Cells(part)
                    : null
            )
            .Single(grade => grade.Part.Id == "active_dry" && grade.Exercise.Parts.Any(other => other.Id == "instant"));
}
