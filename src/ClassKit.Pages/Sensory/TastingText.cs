using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Sensory;
using ClassKit.Wording.Counts;

namespace ClassKit.Pages.Sensory;

/// <summary>What is set out for a tasting, in words.</summary>
internal static class TastingText
{
    /// <summary>"plain muffin of teams 1 and 3".</summary>
    public static string Product(FormulaCard card, IReadOnlyList<string> teams) =>
        $"{card.Bread.Formula.Title.ToLowerInvariant()} of {Counted.Noun(teams.Count, "team")} {Phrases.List(teams)}";

    /// <summary>"48 bites: each of 36 popovers into 2".</summary>
    public static string ToCut(TastedBread bread) =>
        bread.Bites <= bread.Pieces
            ? $"{Counted.Of(bread.Bites, "bite")}, of {Made(bread)}"
            : $"{Counted.Of(bread.Bites, "bite")}: {(bread.Pieces == 1 ? "" : "each of ")}{Made(bread)} into {bread.CutInto}";

    /// <summary>What to do where there is less than a bite for everybody.</summary>
    public static string TooLittle(TastedBread bread) =>
        $"{bread.Coded.Bread.Formula.Title}: {Counted.Of(bread.Bites, "bite")} are wanted and {Made(bread)} {(bread.Pieces == 1 ? "gives" : "give")} {bread.MostBites} of {TastedBread.LeastBite.Grams:0} g of dough (common practice, no source). Let every second seat taste it, or have teams make more.";

    private static string Made(TastedBread bread) => Counted.Of(bread.Pieces, bread.Coded.Bread.Piece, bread.Coded.Bread.Pieces);
}
