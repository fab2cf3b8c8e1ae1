using ClassKit.PracticeBank.Tests.Bank;
using ClassKit.PracticeBank.Tests.Oracles;
using ClassKit.Tests.Exercises;

namespace ClassKit.PracticeBank.Tests.Keys;

/// <summary>
/// The keys, written as cell formulas by whoever wrote the exercise, against ClassKit.Baking, which is other code by other hands.
/// </summary>
public sealed class BakingAgreesTests
{
    private static readonly int VariantsEach = Trials.Of(10_000, 20);

    public static TheoryData<string> Ids => ShippedBank.Ids;

    [Fact]
    public void Every_exercise_has_an_oracle_and_every_oracle_an_exercise() =>
        Assert.Equal(
            ShippedBank.Exercises.Select(exercise => exercise.Id).Order(StringComparer.Ordinal),
            BankOracles.All.Keys.Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(Ids))]
    public void On_hundreds_of_variants_every_key_gives_what_Baking_computes_and_no_guarantee_is_broken(string id)
    {
        var exercise = ShippedBank.Of(id);
        var band = Variants.Of(exercise).Band!;
        foreach (var variant in Variants.Draw(exercise, VariantsEach))
        {
            VariantPromises.AssertKept(exercise, variant, band);
            var known = BankOracles.All[id](new(variant));
            Assert.Equal(exercise.Parts.Where(part => part.InWords is null).Select(part => part.Id), known.Select(answer => answer.Part));
            foreach (var answer in known)
            {
                var key = variant.Answers[answer.Part];
                // The message is made only where something is wrong.
                if (!(Math.Abs(key - answer.Value) <= answer.Within * Math.Abs(answer.Value) + 1e-9))
                    Assert.Fail(
                        $"{id}/{answer.Part}: the key gives {key}, Baking {answer.Value}, with {string.Join(", ", variant.Givens)}"
                    );
            }
        }
    }
}
