using ClassKit.Exercises.Randomness;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Sensory;

/// <summary>What is tasted blind at the end of a lesson: its breads on scales, and two batches in a triangle test.</summary>
/// <param name="Breads">Every bread behind its code, in the order in which it is tasted.</param>
/// <param name="Servings">The triangle test's samples, one row a seat.</param>
public sealed record Tasting(IReadOnlyList<CodedBread> Breads, IReadOnlyList<TriangleServing> Servings)
{
    private const int FirstCode = 100;
    private const int Codes = 900;

    /// <summary>The tasting of a class: codes and orders are drawn, and the same seed draws the same.</summary>
    /// <param name="breads">What is tasted on scales.</param>
    /// <param name="seats">How many taste; not negative.</param>
    /// <param name="draws">Where chance comes from.</param>
    public static Tasting For(IReadOnlyList<LessonFormula> breads, int seats, SeededDraws draws)
    {
        ArgumentNullException.ThrowIfNull(breads);
        ArgumentNullException.ThrowIfNull(draws);
        var codes = new Queue<int>();
        List<CodedBread> coded = [];
        foreach (var bread in breads)
            coded.Add(new(bread, Next()));
        Shuffle(coded);
        List<TriangleServing> servings = [];
        while (servings.Count < seats)
        {
            // All six before any comes again.
            List<string> orders = [.. TriangleServing.Orders];
            Shuffle(orders);
            foreach (var order in orders.Take(seats - servings.Count))
                servings.Add(new(servings.Count + 1, order, [Next(), Next(), Next()]));
        }
        return new(coded, servings);

        // No number is used twice before all of them have been.
        int Next()
        {
            if (codes.Count < 3)
            {
                List<int> all = [.. Enumerable.Range(FirstCode, Codes).Except(coded.Select(bread => bread.Code))];
                Shuffle(all);
                foreach (var code in all.Except([.. codes]))
                    codes.Enqueue(code);
            }
            return codes.Dequeue();
        }

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
