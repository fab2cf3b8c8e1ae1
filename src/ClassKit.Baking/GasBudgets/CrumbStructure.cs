namespace ClassKit.Baking.GasBudgets;

/// <summary>What a bread's gas blows up, where its leavening and formula do not tell.</summary>
public enum CrumbStructure
{
    /// <summary>Many bubbles in a crumb.</summary>
    Crumb,

    /// <summary>One hollow behind a shell, in which it stays.</summary>
    HollowShell,

    /// <summary>Two skins of a flat bread, which fall together again.</summary>
    Pocket,

    /// <summary>Sheets of dough that sheets of fat keep apart.</summary>
    Layers,

    /// <summary>Egg or egg white beaten to a foam.</summary>
    Foam,
}
