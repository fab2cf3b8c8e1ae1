using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.HeatBalances;

/// <summary>Something that goes into a bowl with its heat; the bowl is one too.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="JoulesPerKelvin">The heat that warms all of it by a kelvin; above 0.</param>
/// <param name="Temperature">As it goes in.</param>
public sealed record HeatPart(string Name, double JoulesPerKelvin, Temperature Temperature)
{
    /// <summary>A mass of an ingredient.</summary>
    public static HeatPart Of(Ingredient ingredient, Mass mass, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return new(ingredient.Name, mass.Grams * SpecificHeat.Of(ingredient), temperature);
    }
}
