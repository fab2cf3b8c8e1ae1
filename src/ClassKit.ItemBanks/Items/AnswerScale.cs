using ClassKit.Exercises.Authoring;

namespace ClassKit.ItemBanks.Items;

/// <summary>What a number is multiplied with to be typed beside its unit: 0.65 is typed as 65 beside %.</summary>
internal static class AnswerScale
{
    private const int OfPercent = 100;

    public static int Of(Part part) => Of(part.Unit);

    public static int Of(Given given) => Of(given.Unit);

    private static int Of(string unit) => AnswerUnit.IsPercent(unit) ? OfPercent : 1;
}
