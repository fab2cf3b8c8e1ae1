namespace ClassKit.Lessons.Sensory;

/// <summary>How the minutes of a tasting are shared out: first measured, then tasted blind, then talked about.</summary>
/// <param name="From">The minute it begins, since the beginning of the class.</param>
/// <param name="BlindFrom">When the blind tasting begins; null where there is no time for one.</param>
/// <param name="TalkFrom">When talking begins; the end of the blind tasting.</param>
/// <param name="To">When it is over.</param>
/// <remarks>
/// A sample on seven scales and its rinse take a taster some two minutes, three samples of a triangle two more: common practice, no source.
/// </remarks>
public sealed record TastingCourse(int From, int? BlindFrom, int TalkFrom, int To)
{
    /// <summary>Below this many minutes nobody tastes blind: measuring and talking take them all.</summary>
    public const int LeastMinutes = 15;

    private const int ASample = 2;
    private const int Triangle = 2;

    /// <summary>How long the blind tasting is; 0 where there is none.</summary>
    public int BlindMinutes => TalkFrom - BlindFrom ?? 0;

    /// <summary>True if the minutes do for so many samples and the triangle.</summary>
    public bool DoesFor(int samples) => BlindMinutes >= samples * ASample + Triangle;

    /// <summary>The fewest minutes of a tasting that do for so many samples and the triangle; see <see cref="DoesFor"/>.</summary>
    /// <param name="samples">How many; 1 or more.</param>
    public static int LeastFor(int samples)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(samples);
        return Enumerable.Range(LeastMinutes, int.MaxValue - LeastMinutes).First(minutes => Of(0, minutes).DoesFor(samples));
    }

    /// <summary>Two fifths measuring, two fifths blind, the rest for talking.</summary>
    /// <param name="from">When the tasting begins.</param>
    /// <param name="minutes">How long it is; 0 or more.</param>
    public static TastingCourse Of(int from, int minutes)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(minutes);
        var part = minutes * 2 / 5;
        return minutes < LeastMinutes
            ? new(from, null, from + minutes / 2, from + minutes)
            : new(from, from + part, from + 2 * part, from + minutes);
    }
}
