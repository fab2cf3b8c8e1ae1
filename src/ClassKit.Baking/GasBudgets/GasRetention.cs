namespace ClassKit.Baking;

/// <summary>The carbon dioxide and air of one dough, minute by minute, less what escapes. One end of the band.</summary>
internal sealed class GasRetention(AmountOfSubstance air, Mass water, Pressure pressure, double share)
{
    private double _carbonDioxide;

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
        var perMole = GasCell.VolumeOf(AmountOfSubstance.FromMoles(1), dough, pressure).Value;
        var bubbles = InBubbles(dough);
        var volume = perMole * (bubbles + air.Moles);
        if (volume <= limit)
            return volume;
        IsFull = true;
        var held = Math.Max(0, limit / perMole - air.Moles);
        _carbonDioxide = held + Dissolved(held, dough);
        return perMole * (held + air.Moles);
    }

    private double InBubbles(Temperature dough) =>
        DissolvedCarbonDioxide.InBubbles(AmountOfSubstance.FromMoles(_carbonDioxide), air, water, dough, pressure).Value.Moles;

    private double Dissolved(double inBubbles, Temperature dough)
    {
        var dry = pressure.Pascals * (1 - GasCell.VapourShare(dough, pressure).Value);
        var share = inBubbles > 0 ? inBubbles / (inBubbles + air.Moles) : 0;
        return DissolvedCarbonDioxide.In(water, dough, Pressure.FromPascals(dry * share)).Moles;
    }
}
