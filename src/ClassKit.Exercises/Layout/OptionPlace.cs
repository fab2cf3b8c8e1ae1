using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Layout;

/// <summary>Where a list of options stands on a practice sheet: a row an option, in the order in which a student reads them.</summary>
/// <param name="List">The list.</param>
/// <param name="FirstRow">The row of the option behind the letter A, from 1.</param>
public sealed record OptionPlace(OptionList List, int FirstRow);
