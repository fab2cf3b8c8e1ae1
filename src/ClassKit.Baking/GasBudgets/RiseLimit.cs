namespace ClassKit.Baking.GasBudgets;

/// <summary>What keeps a bread from rising further.</summary>
public enum RiseLimit
{
    /// <summary>The gas: the walls set before they were stretched to their limit, so more gas would have raised it more.</summary>
    Gas,

    /// <summary>The walls: there is more gas than they hold, and the rest escapes.</summary>
    Walls,
}
