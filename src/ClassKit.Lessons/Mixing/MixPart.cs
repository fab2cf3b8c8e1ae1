using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Mixing;

/// <summary>One ingredient as it goes into the bowl.</summary>
/// <param name="Line">The ingredient with its percentage: of a part of it, that part's.</param>
/// <param name="Kind">How it came to its temperature.</param>
/// <param name="Temperature">How warm it is.</param>
public sealed record MixPart(FormulaLine Line, HeatKind Kind, Temperature Temperature)
{
    /// <summary>How much it is of the ingredient in the formula: above 0, and 1 where all of it goes in alike.</summary>
    public double Share { get; init; } = 1;

    /// <summary>True of what is left of an ingredient when steps have taken their parts of it.</summary>
    public bool IsRest { get; init; }

    /// <summary>The ingredient.</summary>
    public Ingredient Ingredient => Line.Ingredient;
}
