namespace ClassKit.Lessons.Authored;

/// <summary>How an ingredient comes to the temperature at which it is mixed.</summary>
public enum HeatKind
{
    /// <summary>It stands in the kitchen and is as warm as that.</summary>
    AsStored,

    /// <summary>It comes straight from the refrigerator.</summary>
    Cold,

    /// <summary>It stands out of the refrigerator for a while before its step: <c>MixSettings.TemperMinutes</c>.</summary>
    Tempered,

    /// <summary>It is melted in a pan of its own.</summary>
    Melted,

    /// <summary>
    /// It is cooked to a paste before the rest goes in, and stirred until that has cooled far enough: <c>MixSettings.CookedPaste</c>. Some
    /// of its water boils off.
    /// </summary>
    Cooked,

    /// <summary>It is brought to the boil and poured over flour: see <c>Scald</c>.</summary>
    Boiled,

    /// <summary>It is warmed, or cooled, until it brings the mix to what is asked.</summary>
    Warmed,
}
