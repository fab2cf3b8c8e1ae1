using ClassKit.Exercises.Authoring;

namespace ClassKit.ItemBanks.Items;

/// <summary>What a number is multiplied with to be typed beside its unit: 0.65 is typed as 65 beside %.</summary>
internal static class AnswerScale
{
    public static int Of(Part part) => part.Unit.Scale;

    public static int Of(Given given) => given.Unit.Scale;
}
