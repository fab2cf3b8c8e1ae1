using ClassKit.Baking.Household;
using ClassKit.Baking.Quantities;

namespace ClassKit.BenchSums.Results;

/// <summary>What a sum comes to: a closed set of kinds, so that whoever shows one has thought of all.</summary>
public abstract record SumQuantity
{
    private SumQuantity() { }

    /// <summary>A mass.</summary>
    public sealed record OfMass(Mass Mass) : SumQuantity;

    /// <summary>A temperature.</summary>
    public sealed record OfTemperature(Temperature Temperature) : SumQuantity;

    /// <summary>A difference of temperatures.</summary>
    public sealed record OfWarming(TemperatureDifference Difference) : SumQuantity;

    /// <summary>A volume of gas or of something measured.</summary>
    public sealed record OfVolume(Volume Volume) : SumQuantity;

    /// <summary>Minutes.</summary>
    public sealed record OfMinutes(double Minutes) : SumQuantity;

    /// <summary>A percentage; 65 is 65 %.</summary>
    public sealed record OfPercent(double Percent) : SumQuantity;

    /// <summary>A factor: so many times.</summary>
    public sealed record OfTimes(double Times) : SumQuantity;

    /// <summary>A whole number of things.</summary>
    public sealed record OfCount(int Count) : SumQuantity;

    /// <summary>Money.</summary>
    public sealed record OfMoney(Money Money) : SumQuantity;

    /// <summary>Gas, in moles.</summary>
    public sealed record OfGas(AmountOfSubstance Gas) : SumQuantity;

    /// <summary>Cups and spoons, with what they miss the mass by.</summary>
    public sealed record OfMeasure(HouseholdMeasure Measure) : SumQuantity;

    /// <summary>Whether something holds.</summary>
    public sealed record OfTruth(bool Holds) : SumQuantity;

    /// <summary>What is known only as a range.</summary>
    public sealed record OfRange(SumQuantity Low, SumQuantity Typical, SumQuantity High) : SumQuantity
    {
        /// <summary>A band of one kind.</summary>
        public static OfRange Of<T>(Band<T> band, Func<T, SumQuantity> each)
        {
            ArgumentNullException.ThrowIfNull(each);
            return new(each(band.Low), each(band.Typical), each(band.High));
        }
    }
}
