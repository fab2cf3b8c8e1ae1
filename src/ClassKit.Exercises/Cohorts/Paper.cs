namespace ClassKit.Exercises.Cohorts;

/// <summary>What a class prints on.</summary>
public enum Paper
{
    /// <summary>210 mm × 297 mm (ISO 216).</summary>
    A4,

    /// <summary>8.5 in × 11 in, 215.9 mm × 279.4 mm (ANSI/ASME Y14.1, size A).</summary>
    Letter,
}
