using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Household;

/// <summary>A mass as cups, spoons or eggs, and how far off that is.</summary>
/// <param name="Text">What to measure: <c>1 3/4 cups</c>, <c>2 large eggs</c>, <c>1 tbsp + 1/2 tsp</c>.</param>
/// <param name="Mass">What the measures hold by the ingredient's household weights.</param>
/// <param name="Error">By how much that is more than the mass asked for, as a share of it: -0.03 is 3 % too little.</param>
public sealed record HouseholdMeasure(string Text, Mass Mass, double Error) : IExplained
{
    /// <summary>How far off the measures are.</summary>
    public Explanation Explanation =>
        Explanations.Explanation.Of(
            "Household measure",
            "error",
            "mass in the measures / mass asked for - 1",
            $"{Figures.Grams(Mass)} / {Figures.Grams(Mass / (1 + Error))} - 1",
            Figures.Percent(Error),
            "Household weights differ with how a cup is filled; this error is that of the rounding only."
        );

    /// <summary>True if the measures are more than 10 % off: weigh instead.</summary>
    public bool IsRough => Math.Abs(Error) > 0.1;
}
