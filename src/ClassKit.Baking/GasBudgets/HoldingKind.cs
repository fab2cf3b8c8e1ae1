namespace ClassKit.Baking.GasBudgets;

/// <summary>The ways in which doughs and batters hold their gas; each is a <see cref="GasHolding"/> of its own.</summary>
public enum HoldingKind
{
    /// <summary>A kneaded yeast dough.</summary>
    KneadedDough,

    /// <summary>A yeast dough that steam cooks.</summary>
    SteamedDough,

    /// <summary>A yeast dough too soft to knead, or a yeast batter.</summary>
    SoftDough,

    /// <summary>A kneaded dough that a starter raises.</summary>
    Sourdough,

    /// <summary>A fermented dough without a net of gluten.</summary>
    DoughWithoutNet,

    /// <summary>A batter with egg that soda or powder raises.</summary>
    Batter,

    /// <summary>A dough without egg that soda or powder raises.</summary>
    QuickDough,

    /// <summary>A batter of creamed fat and sugar.</summary>
    CreamedBatter,

    /// <summary>A batter or dough of other flours than wheat, raised by soda or powder.</summary>
    BatterWithoutGluten,

    /// <summary>A shell of egg and wheat that steam blows up.</summary>
    Shell,

    /// <summary>A shell of wheat without egg.</summary>
    ShellWithoutEgg,

    /// <summary>A shell of other flours than wheat.</summary>
    ShellWithoutGluten,

    /// <summary>A flat bread of two skins.</summary>
    Pocket,

    /// <summary>Sheets of dough and fat.</summary>
    Layers,

    /// <summary>Beaten egg with flour folded in.</summary>
    Foam,
}
