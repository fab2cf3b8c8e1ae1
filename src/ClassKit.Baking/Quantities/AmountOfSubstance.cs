namespace ClassKit.Baking.Quantities;

/// <summary>An amount of substance. <c>default</c> is nothing, 0 mol.</summary>
public readonly record struct AmountOfSubstance : IComparable<AmountOfSubstance>
{
    private AmountOfSubstance(double moles) => Moles = moles;

    /// <summary>In moles.</summary>
    public double Moles { get; }

    /// <summary>In millimoles.</summary>
    public double Millimoles => Moles * 1000;

    /// <summary>From moles; finite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static AmountOfSubstance FromMoles(double moles) =>
        double.IsFinite(moles)
            ? new(moles)
            : throw new ArgumentOutOfRangeException(nameof(moles), moles, "An amount of substance is a finite number of moles.");

    /// <inheritdoc/>
    public int CompareTo(AmountOfSubstance other) => Moles.CompareTo(other.Moles);

    /// <summary>The sum.</summary>
    public static AmountOfSubstance operator +(AmountOfSubstance left, AmountOfSubstance right) => new(left.Moles + right.Moles);

    /// <summary>The difference, which may be negative.</summary>
    public static AmountOfSubstance operator -(AmountOfSubstance left, AmountOfSubstance right) => new(left.Moles - right.Moles);

    /// <summary>Scaled by a factor.</summary>
    public static AmountOfSubstance operator *(AmountOfSubstance amount, double factor) => FromMoles(amount.Moles * factor);

    /// <summary>Less than.</summary>
    public static bool operator <(AmountOfSubstance left, AmountOfSubstance right) => left.Moles < right.Moles;

    /// <summary>More than.</summary>
    public static bool operator >(AmountOfSubstance left, AmountOfSubstance right) => left.Moles > right.Moles;

    /// <summary>At most.</summary>
    public static bool operator <=(AmountOfSubstance left, AmountOfSubstance right) => left.Moles <= right.Moles;

    /// <summary>At least.</summary>
    public static bool operator >=(AmountOfSubstance left, AmountOfSubstance right) => left.Moles >= right.Moles;
}
