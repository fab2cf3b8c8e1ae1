using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Grades;

/// <summary>What a category comes to for one student.</summary>
/// <param name="Category">The category.</param>
/// <param name="Works">Its works, in the order of the term.</param>
/// <param name="Share">The mean of what counts, 0 to 1; null where nothing counts.</param>
/// <param name="WeightNow">Its share of this student's grade: categories without a result leave their weight to the others in proportion; 0
/// without a result.</param>
public sealed record CategoryResult(Category Category, IReadOnlyList<WorkResult> Works, decimal? Share, decimal WeightNow);
