namespace ClassKit.Baking.Ingredients;

/// <summary>A kitchen's way of counting an ingredient instead of measuring it: eggs, sticks, packets.</summary>
/// <param name="Singular">One of them: <c>large egg</c>.</param>
/// <param name="Plural">Several: <c>large eggs</c>.</param>
/// <param name="Grams">The mass of one, without shell or wrapper; above 0.</param>
public sealed record HouseholdPiece(string Singular, string Plural, double Grams);
