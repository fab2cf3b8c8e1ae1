namespace ClassKit.BenchSums.Catalogue;

/// <summary>What a bench sum is about, in the order in which a baker meets them.</summary>
public enum SumTopic
{
    /// <summary>Percentages, batches, losses, preferments.</summary>
    Scaling,

    /// <summary>Dough temperature, water, ice.</summary>
    Temperature,

    /// <summary>Yeast and rises.</summary>
    Yeast,

    /// <summary>Soda, acid, baking powder.</summary>
    Chemical,

    /// <summary>Steam, bubbles, altitude.</summary>
    GasAndAltitude,

    /// <summary>Cups and spoons.</summary>
    Measures,

    /// <summary>Yields and prices.</summary>
    Cost,

    /// <summary>What is kept how long, and what is in it.</summary>
    Safety,
}
