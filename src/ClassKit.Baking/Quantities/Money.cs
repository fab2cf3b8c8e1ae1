using System.Globalization;

namespace ClassKit.Baking.Quantities;

/// <summary>An amount of money in whatever the kitchen pays with. Decimal, so that cents stay cents. <c>default</c> is nothing.</summary>
/// <param name="Amount">In the main unit: dollars, euros.</param>
public readonly record struct Money(decimal Amount)
{
    /// <summary>To the cent, halves away from zero, as invoices do.</summary>
    public Money Rounded => new(Math.Round(Amount, 2, MidpointRounding.AwayFromZero));

    /// <summary>The amount alone: the members that a record prints by itself hold a <see cref="Money"/> again, without end.</summary>
    public override string ToString() => Amount.ToString(CultureInfo.InvariantCulture);

    /// <summary>The sum.</summary>
    public static Money operator +(Money left, Money right) => new(left.Amount + right.Amount);

    /// <summary>The difference, which may be negative.</summary>
    public static Money operator -(Money left, Money right) => new(left.Amount - right.Amount);

    /// <summary>Scaled by a factor.</summary>
    public static Money operator *(Money money, decimal factor) => new(money.Amount * factor);

    /// <summary>Divided by a number other than 0.</summary>
    public static Money operator /(Money money, decimal divisor) => new(money.Amount / divisor);
}
