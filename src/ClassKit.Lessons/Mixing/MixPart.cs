using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>One ingredient as it goes into the bowl.</summary>
/// <param name="Line">The ingredient with its percentage.</param>
/// <param name="Kind">How it came to its temperature.</param>
/// <param name="Temperature">How warm it is.</param>
public sealed record MixPart(FormulaLine Line, HeatKind Kind, Temperature Temperature)
{
    /// <summary>The ingredient.</summary>
    public Ingredient Ingredient => Line.Ingredient;
}
