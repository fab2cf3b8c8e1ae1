using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.SelfChecking;
using ClassKit.Exercises.Tests.Guarantees;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Tests.SelfChecking;

public sealed class AnswerMeaningTests
{
    // 800 g of flour, a quarter of it water, and a dough of both: 200 g and 1000 g. Expected values are worked out by hand.
    private static readonly Exercise Dough = Asked.Exercise(
        Asked.Part("water", "=flour*share", misconceptions: ("divided", "=flour/share")),
        Asked.Part("dough", "=flour+water", misconceptions: ("water_off", "=flour-water"))
    );

    private static readonly Variant Variant = new(
        Dough,
        new Dictionary<string, decimal> { ["flour"] = 800, ["share"] = 0.25m },
        new Dictionary<string, double> { ["water"] = 200, ["dough"] = 1000 }
    );

    private static (MeaningKind, string?, string?) Meant(int part, double typed) =>
        AnswerMeaning.Of(Variant, Dough.Parts[part]).FirstOrDefault(meaning => typed >= meaning.Low && typed <= meaning.High) is { } meaning
            ? (meaning.Kind, meaning.Misconception?.Id, meaning.SlipIn?.Id)
            : throw new InvalidOperationException($"{typed} means nothing.");

    [Theory]
    [InlineData(0, 200, MeaningKind.Right, null, null)]
    [InlineData(0, 201, MeaningKind.Right, null, null)]
    [InlineData(0, 3200, MeaningKind.Misconception, "divided", null)]
    [InlineData(1, 999, MeaningKind.Right, null, null)]
    [InlineData(1, 600, MeaningKind.Misconception, "water_off", null)]
    [InlineData(1, 4000, MeaningKind.CarriedOn, "divided", "water")]
    public void A_number_means_what_its_method_gives(int part, double typed, MeaningKind kind, string? misconception, string? slipIn) =>
        Assert.Equal((kind, misconception, slipIn), Meant(part, typed));

    [Theory]
    [InlineData(0, 201.1)]
    [InlineData(1, 1002)]
    public void A_number_outside_every_tolerance_means_nothing(int part, double typed) =>
        Assert.Throws<InvalidOperationException>(() => Meant(part, typed));
}
