using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Cards;

namespace ClassKit.Lessons.Sensory;

/// <summary>What a tasting takes of one bread, and what the class has of it.</summary>
/// <param name="Coded">The bread behind its number.</param>
/// <param name="Pieces">How many pieces the whole class makes; at least 1.</param>
/// <param name="Bites">How many bites are served in both parts; 0 or more.</param>
/// <param name="PieceMass">Of dough, before it is baked.</param>
public sealed record TastedBread(CodedBread Coded, int Pieces, int Bites, Mass PieceMass)
{
    /// <summary>
    /// A smaller bite says little about a crumb: some 5 g of dough, a cube of 2 to 3 cm once baked. Common practice, no source.
    /// </summary>
    public static Mass LeastBite { get; } = Mass.FromGrams(5);

    /// <summary>Into how many bites each piece is cut, so that there are enough.</summary>
    public int CutInto => (Bites + Pieces - 1) / Pieces;

    /// <summary>The most bites that the class's pieces give.</summary>
    public int MostBites => Pieces * (int)(PieceMass.Grams / LeastBite.Grams);

    /// <summary>True if there is a bite for everybody.</summary>
    public bool IsEnough => Bites <= MostBites;

    /// <summary>What a tasting takes of each bread, in the order of the codes.</summary>
    /// <param name="tasting">Who tastes what.</param>
    /// <param name="cards">What the class makes.</param>
    /// <param name="triangle">What the triangle test sets out; null for something else.</param>
    public static IReadOnlyList<TastedBread> Of(Tasting tasting, IReadOnlyList<FormulaCard> cards, TrianglePair? triangle)
    {
        ArgumentNullException.ThrowIfNull(tasting);
        return
        [
            .. tasting.Breads.Select(coded =>
            {
                var card = cards.First(card => card.Bread.Formula.Id == coded.Bread.Formula.Id);
                var bites =
                    tasting.Plates.Count + (triangle?.A == card ? tasting.Bites('A') : 0) + (triangle?.B == card ? tasting.Bites('B') : 0);
                return new TastedBread(coded, card.Pieces * card.Loads, bites, card.Bread.PieceMass);
            }),
        ];
    }
}
