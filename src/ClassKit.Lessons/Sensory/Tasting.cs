using ClassKit.Exercises.Randomness;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Sensory;

/// <summary>What is tasted blind at the end of a lesson: its breads on scales, and two batches in a triangle test.</summary>
/// <param name="Breads">Every bread behind its code, in the order of the codes.</param>
/// <param name="Servings">The triangle test's samples, one row a seat.</param>
public sealed record Tasting(IReadOnlyList<CodedBread> Breads, IReadOnlyList<TriangleServing> Servings)
{
    /// <summary>In which order each seat tastes the breads: balanced by <see cref="ServingOrders"/>, one row a seat.</summary>
    public IReadOnlyList<TasterPlate> Plates { get; init; } = [];

    /// <summary>The most seats of one tasting: nobody serves more at once, and codes do for all of them.</summary>
    public const int MostSeats = 290;

    /// <summary>How many bites of one of the triangle's two products are served.</summary>
    /// <param name="product"><c>A</c> or <c>B</c>.</param>
    public int Bites(char product) => Servings.Sum(serving => serving.Order.Count(letter => letter == product));

    private const int FirstCode = 100;
    private const int Codes = 900;

    /// <summary>The tasting of a class: codes and orders are drawn, and the same seed draws the same.</summary>
    /// <param name="breads">What is tasted on scales.</param>
    /// <param name="seats">How many taste; not negative. Beyond <see cref="MostSeats"/> they take turns at the same plates.</param>
    /// <param name="draws">Where chance comes from.</param>
    public static Tasting For(IReadOnlyList<LessonFormula> breads, int seats, SeededDraws draws)
    {
        ArgumentNullException.ThrowIfNull(breads);
        ArgumentNullException.ThrowIfNull(draws);
        List<int> all = [.. Enumerable.Range(FirstCode, Codes)];
        Shuffle(all);
        var codes = new Queue<int>(all);
        List<CodedBread> coded = [.. breads.Select(bread => new CodedBread(bread, codes.Dequeue()))];
        coded.Sort((left, right) => left.Code.CompareTo(right.Code));
        List<TriangleServing> servings = [];
        seats = Math.Min(seats, MostSeats);
        while (servings.Count < seats)
        {
            // All six before any comes again.
            List<string> orders = [.. TriangleServing.Orders];
            Shuffle(orders);
            foreach (var order in orders.Take(seats - servings.Count))
                servings.Add(new(servings.Count + 1, order, [codes.Dequeue(), codes.Dequeue(), codes.Dequeue()]));
        }
        List<TasterPlate> plates = [];
        while (plates.Count < seats)
        {
            List<IReadOnlyList<int>> orders = [.. ServingOrders.Block(coded.Count)];
            Shuffle(orders);
            foreach (var order in orders.Take(seats - plates.Count))
                plates.Add(new(plates.Count + 1, [.. order.Select(bread => coded[bread].Code)]));
        }
        return new(coded, servings) { Plates = plates };

        void Shuffle<T>(List<T> items)
        {
            for (var last = items.Count - 1; last > 0; last--)
            {
                var other = draws.Below(last + 1);
                (items[last], items[other]) = (items[other], items[last]);
            }
        }
    }
}
