namespace ClassKit.Exercises.Randomness;

/// <summary>A stream of pseudo-random numbers that a seed alone decides, the same on every machine and in every version.</summary>
/// <remarks>SplitMix64: G. L. Steele, D. Lea, C. H. Flood, "Fast Splittable Pseudorandom Number Generators", OOPSLA 2014.</remarks>
public sealed class SeededDraws
{
    private const ulong GoldenGamma = 0x9E3779B97F4A7C15;

    private ulong _state;

    /// <summary>A stream that starts from a seed.</summary>
    public SeededDraws(ulong seed) => _state = seed;

    /// <summary>A stream for one purpose: the same seed and words give the same stream, other words an unrelated one.</summary>
    /// <remarks>So that one student's variant never depends on how many numbers were drawn for another.</remarks>
    public static SeededDraws For(ulong seed, params ReadOnlySpan<string> purpose)
    {
        var state = seed;
        foreach (var word in purpose)
            state = new SeededDraws(state ^ Fnv1a(word)).Next();
        return new(state);
    }

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        var mixed = _state += GoldenGamma;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }

    /// <summary>A whole number from 0 to below <paramref name="count"/>, every one equally likely to within 2^-32.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is below 1.</exception>
    public int Below(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return (int)Math.BigMul(Next(), (ulong)count, out _);
    }

    /// <summary>A number from 0 to below 1 in steps of 2^-53.</summary>
    public double Fraction() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>FNV-1a over the UTF-16 code units, a hash that never changes (string.GetHashCode does with every process).</summary>
    private static ulong Fnv1a(string word)
    {
        var hash = 0xCBF29CE484222325;
        foreach (var unit in word)
            hash = (hash ^ unit) * 0x100000001B3;
        return hash;
    }
}
