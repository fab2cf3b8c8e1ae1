namespace ClassKit.Notes;

/// <summary>How a student's grade would differ from the one that was given out.</summary>
/// <param name="Student">As pages call the student.</param>
/// <param name="Before">The grade that was given out; null for none.</param>
/// <param name="Now">The grade that there would be; null for none.</param>
/// <param name="PercentBefore">Rounded by the rule; null for none.</param>
/// <param name="PercentNow">Rounded by the rule; null for none.</param>
/// <param name="Works">The works that came to something else then.</param>
public sealed record FrozenChange(
    string Student,
    string? Before,
    string? Now,
    decimal? PercentBefore,
    decimal? PercentNow,
    IReadOnlyList<FrozenWorkChange> Works
);

/// <summary>A work that came to something else when a grade was given out.</summary>
/// <param name="Work">Its title.</param>
/// <param name="Before">What it came to, 0 to 1; null where it stood for nothing.</param>
/// <param name="Now">What it comes to now.</param>
public sealed record FrozenWorkChange(string Work, decimal? Before, decimal? Now)
{
    /// <summary>True if it was one of the lowest then, which the rule drops.</summary>
    public bool WasDropped { get; init; }

    /// <summary>True if it is one of the lowest now.</summary>
    public bool IsDropped { get; init; }
}
