namespace ClassKit.Baking.Chemistry;

/// <summary>When an acid sets gas free from soda. The neutralising value says nothing about it.</summary>
public enum ReleaseKind
{
    /// <summary>At once, while mixing.</summary>
    AtMixing,

    /// <summary>Slowly after mixing.</summary>
    AfterMixing,

    /// <summary>A little after mixing, most of it when heated.</summary>
    MostlyOnHeating,

    /// <summary>When heated: see <see cref="LeaveningAcid.HeatsFrom"/>.</summary>
    OnHeating,
}
