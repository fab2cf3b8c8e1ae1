namespace ClassKit.Grading.Judging.Slips;

/// <summary>Kinds of slip that a marking scheme may give credit for.</summary>
internal enum SlipKind
{
    /// <summary>The right quantity in another unit, or off by a power of ten.</summary>
    Unit,

    /// <summary>Rounded on the way, or further than asked.</summary>
    Rounding,

    /// <summary>A wrong formula near the key.</summary>
    NearMiss,
}
