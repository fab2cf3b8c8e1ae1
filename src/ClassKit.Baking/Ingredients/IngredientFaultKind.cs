namespace ClassKit.Baking.Ingredients;

/// <summary>What can be wrong with a cell of a file of ingredients.</summary>
public enum IngredientFaultKind
{
    /// <summary>Nothing stands there, and something must.</summary>
    Missing,

    /// <summary>It is no number.</summary>
    NoNumber,

    /// <summary>It is not from 0 to 100.</summary>
    NoShare,

    /// <summary>Everything together is more than 100 g in 100 g.</summary>
    TooMuch,

    /// <summary>A weight that is not above 0.</summary>
    NoWeight,

    /// <summary>It is no kind of ingredient.</summary>
    UnknownKind,

    /// <summary>It is nothing that makes gas.</summary>
    UnknownGas,

    /// <summary>It is no allergen.</summary>
    UnknownAllergen,

    /// <summary>It is neither yes nor no.</summary>
    NoAnswer,

    /// <summary>It is no id.</summary>
    NoId,
}
