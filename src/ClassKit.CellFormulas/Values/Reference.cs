namespace ClassKit.CellFormulas.Values;

/// <summary>What a reference points at: one rectangle, or several for a union.</summary>
internal sealed class Reference(Area[] areas)
{
    public Reference(Area area)
        : this([area]) { }

    public Area[] Areas { get; } = areas;

    public Area First => Areas[0];

    public bool IsCell => Areas.Length == 1 && Areas[0].IsCell;
}
