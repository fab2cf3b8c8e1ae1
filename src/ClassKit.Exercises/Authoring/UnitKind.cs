namespace ClassKit.Exercises.Authoring;

/// <summary>What a unit measures.</summary>
public enum UnitKind
{
    /// <summary>Nothing: a bare number, or a count of what the text names.</summary>
    None,

    /// <summary>One that we do not know, such as rolls: whatever is written there, a number stays as it is.</summary>
    Other,

    /// <summary>Grams and their like, pounds and ounces.</summary>
    Mass,

    /// <summary>Litres and their like, cups and spoons.</summary>
    Volume,

    /// <summary>Degrees: less than nothing can be, and twice as much of it means nothing, since its zero is arbitrary.</summary>
    Temperature,

    /// <summary>Hours, minutes and seconds.</summary>
    Time,

    /// <summary>Metres and their like.</summary>
    Length,

    /// <summary>Pascals and their like.</summary>
    Pressure,

    /// <summary>Moles.</summary>
    Amount,

    /// <summary>Pieces.</summary>
    Count,

    /// <summary>Percent: a cell holds 0.65 for 65 %.</summary>
    Share,

    /// <summary>Money, however it is called: people write 2.50 and never 2.5.</summary>
    Money,
}
