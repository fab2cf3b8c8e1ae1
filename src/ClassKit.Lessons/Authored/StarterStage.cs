using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Authored;

/// <summary>One mixing of a starter's build.</summary>
/// <param name="Build">How it is mixed, how warm and how long it stands.</param>
/// <param name="HoursBefore">How long before the starter is weighed for the dough.</param>
/// <param name="Parts">Ripe starter, flour and water.</param>
public sealed record StarterStage(StarterBuild Build, double HoursBefore, IReadOnlyList<(Ingredient Ingredient, Mass Mass)> Parts);
