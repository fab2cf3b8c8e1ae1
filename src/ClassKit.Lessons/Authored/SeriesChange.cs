using ClassKit.Baking.Ingredients;

namespace ClassKit.Lessons.Authored;

/// <summary>One thing in which a bread of a series differs from the bread as it is written.</summary>
public abstract record SeriesChange
{
    private SeriesChange() { }

    /// <summary>An ingredient that is not in it.</summary>
    public sealed record LeftOut(Ingredient Ingredient) : SeriesChange;

    /// <summary>An ingredient of which it has another share.</summary>
    /// <param name="Ingredient">What; it may be new to the formula.</param>
    /// <param name="Percent">Of all flour together; above 0.</param>
    public sealed record Share(Ingredient Ingredient, double Percent) : SeriesChange;

    /// <summary>A leavening that has lost some of its strength: it weighs what it did, and makes less gas.</summary>
    /// <param name="Ingredient">What.</param>
    /// <param name="Strength">What is left of it, above 0 and below 1.</param>
    public sealed record Weakened(Ingredient Ingredient, double Strength) : SeriesChange;

    /// <summary>A leavening that has grown old: it weighs what it did, and what gas is left in it nobody can compute.</summary>
    /// <param name="Ingredient">What.</param>
    /// <param name="How">In the author's words: <c>grown old</c>, <c>kept open 6 months</c>.</param>
    public sealed record Aged(Ingredient Ingredient, string How) : SeriesChange;

    /// <summary>A step that takes another time.</summary>
    /// <param name="StepName">Which.</param>
    /// <param name="MinMinutes">The shortest.</param>
    /// <param name="MaxMinutes">The longest; at least <paramref name="MinMinutes"/>.</param>
    public sealed record Timed(string StepName, int MinMinutes, int MaxMinutes) : SeriesChange;

    /// <summary>A stand between two steps that the bread as written does not have.</summary>
    /// <param name="AfterStep">The step behind which it stands.</param>
    /// <param name="Minutes">How long; above 0.</param>
    public sealed record Held(string AfterStep, int Minutes) : SeriesChange;
}
