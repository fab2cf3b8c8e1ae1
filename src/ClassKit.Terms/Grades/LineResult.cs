using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Grades;

/// <summary>How a student stands to something that must be passed.</summary>
/// <param name="Line">The line.</param>
/// <param name="Share">What was reached, 0 to 1: the category's result, or the mean of the criterion over all marked work of the category,
/// dropped work included (of each work the sitting that counts, or the best where the better one does); null where nothing was
/// marked.</param>
/// <param name="State">Whether that passes.</param>
public sealed record LineResult(PassLine Line, decimal? Share, LineState State);
