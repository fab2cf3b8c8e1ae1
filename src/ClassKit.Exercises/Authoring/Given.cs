namespace ClassKit.Exercises.Authoring;

/// <summary>A quantity that the student is told: drawn from a range in steps, or the same for all.</summary>
/// <param name="Id">The name that keys use.</param>
/// <param name="Label">The words beside the cell.</param>
/// <param name="Unit">The unit printed behind the value; see <see cref="Authoring.Unit"/> for percent.</param>
/// <param name="From">The lowest value, in the cell's own scale: 65 % is 0.65.</param>
/// <param name="To">The highest value, itself possible; equal to <paramref name="From"/> for a constant.</param>
/// <param name="Step">The distance between possible values; 0 for a constant.</param>
/// <remarks>Decimal, so that 0.1 stays 0.1 through drawing and printing.</remarks>
public sealed record Given(string Id, string Label, Unit Unit, decimal From, decimal To, decimal Step)
{
    /// <summary>True if every student gets the same value.</summary>
    public bool IsConstant => From == To;

    /// <summary>How many values can be drawn.</summary>
    public int Count => IsConstant ? 1 : (int)decimal.Floor((To - From) / Step) + 1;

    /// <summary>The value at a place in the range, counted from 0.</summary>
    public decimal ValueAt(int index) => From + Step * index;

    /// <summary>True for a value in the range.</summary>
    public bool CanBe(decimal value) => value >= From && value <= To && (IsConstant || (value - From) % Step == 0);
}
