namespace ClassKit.Records.Grades;

/// <summary>A grade of a term that was given out.</summary>
/// <param name="Student">The student's id.</param>
/// <param name="Grade">As the scale calls it; null where nothing counted yet.</param>
/// <param name="Percent">The weighted mean, unrounded; null where nothing counted yet.</param>
/// <param name="Rounded">The same, rounded by the rule.</param>
/// <param name="IsProvisional">True if a mark was still to come.</param>
/// <param name="Works">What each work was worth.</param>
public sealed record FrozenGrade(
    string Student,
    string? Grade,
    decimal? Percent,
    decimal? Rounded,
    bool IsProvisional,
    IReadOnlyList<FrozenWork> Works
);

/// <summary>What a work was worth in a grade that was given out.</summary>
/// <param name="Title">The work.</param>
/// <param name="Standing">How it stood in the grade.</param>
/// <param name="Share">What it came to, 0 to 1; null where it stood for nothing.</param>
public sealed record FrozenWork(string Title, string Standing, decimal? Share);
