using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.GasBudgets;

/// <summary>The carbon dioxide and air of one dough, minute by minute, less what escapes. One end of the band.</summary>
internal sealed class GasRetention(AmountOfSubstance air, Mass water, Pressure pressure, double share)
{
    private double _carbonDioxide;
    private double _air = air.Moles;

    /// <summary>True once gas had to go because the walls were stretched to their limit.</summary>
    public bool IsFull { get; private set; }

    /// <summary>New gas, of which a share stays.</summary>
    public void Add(double moles) => _carbonDioxide += moles * share;

    /// <summary>Stirring down: the bubbles give up their carbon dioxide, the water keeps its own.</summary>
    public void Degas(Temperature dough)
    {
        _carbonDioxide -= InBubbles(dough);
        IsFull = false;
    }

    /// <summary>The room that the gas takes, once what the walls cannot hold has gone.</summary>
    public Volume VolumeAt(Temperature dough, Volume limit)
    {
        var perMole = GasCell.PerMole(dough, pressure);
        var bubbles = InBubbles(dough);
        var volume = perMole * (bubbles + _air);
        if (volume <= limit)
            return volume;
        IsFull = true;
        // A bubble that bursts loses air with the rest.
        _air = Math.Min(_air, limit / perMole);
        var held = limit / perMole - _air;
        _carbonDioxide = held + Dissolved(held, dough);
        return limit;
    }

    private double InBubbles(Temperature dough) => DissolvedCarbonDioxide.MolesInBubbles(_carbonDioxide, _air, Full(dough));

    private double Dissolved(double inBubbles, Temperature dough) => inBubbles > 0 ? Full(dough) * inBubbles / (inBubbles + _air) : 0;

    /// <summary>What the water holds under pure carbon dioxide.</summary>
    private double Full(Temperature dough) => DissolvedCarbonDioxide.In(water, dough, GasCell.DryPressure(dough, pressure)).Moles;
}
