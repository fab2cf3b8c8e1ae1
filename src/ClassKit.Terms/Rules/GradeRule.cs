namespace ClassKit.Terms.Rules;

/// <summary>How the marks of a term become one grade.</summary>
/// <param name="Id">The file's name under rubrics/, without its ending.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Categories">At least one; weights add up to 1.</param>
/// <param name="Lines">What must be passed whatever the average; may be empty.</param>
/// <param name="Scale">The grades that there are.</param>
/// <param name="Resit">What a resit counts for.</param>
/// <param name="Absence">What an absence comes to.</param>
/// <param name="LateOff">The share taken off late work that nothing was taken off yet, 0 to 1.</param>
/// <param name="SecondMarker">What counts where two have marked.</param>
/// <param name="Rounding">How the result is rounded.</param>
public sealed record GradeRule(
    string Id,
    string Title,
    IReadOnlyList<Category> Categories,
    IReadOnlyList<PassLine> Lines,
    GradeScale Scale,
    ResitRule Resit,
    AbsenceRule Absence,
    decimal LateOff,
    MarkerRule SecondMarker,
    Rounding Rounding
);
