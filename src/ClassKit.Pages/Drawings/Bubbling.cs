using ClassKit.Exercises.Randomness;

namespace ClassKit.Pages.Drawings;

/// <summary>How many bubbles a cut has, how large they are, and how much stands between them.</summary>
/// <param name="Count">How many are tried for.</param>
/// <param name="Least">The smallest radius, in millimetres.</param>
/// <param name="Most">The largest.</param>
/// <param name="Wall">What stands between two at least, in millimetres; less than nothing where they have run together.</param>
internal sealed record Bubbling(int Count, double Least, double Most, double Wall)
{
    /// <summary>A place is given up after so many misses: a full cut has no more room.</summary>
    private const int Tries = 60;

    /// <summary>Bubbles that lie inside the outline and keep off each other.</summary>
    /// <param name="random">Where they fall.</param>
    /// <param name="top">How far down the top is, at -1 to 1 across.</param>
    /// <param name="half">Half of the width at a depth.</param>
    public IReadOnlyList<Bubble> Fill(SeededDraws random, Func<double, double> top, Func<double, double> half)
    {
        var bubbles = new List<Bubble>();
        for (var number = 0; number < Count; number++)
        {
            // Large ones first: small ones still find room between them.
            var radius = Least + ((Most - Least) * Math.Pow(1 - (number / (double)Count), 2));
            for (var attempt = 0; attempt < Tries; attempt++)
            {
                var across = (2 * random.Fraction()) - 1;
                var y = SeenCut.Floor - ((SeenCut.Floor - top(across)) * random.Fraction());
                var bubble = new Bubble(50 + (across * half(y)), y, radius, radius * (0.8 + (0.2 * random.Fraction())));
                if (!IsInside(bubble, top, half) || bubbles.Exists(other => Distance(other, bubble) < other.Reach + bubble.Reach + Wall))
                    continue;
                bubbles.Add(bubble);
                break;
            }
        }
        return bubbles;
    }

    private static bool IsInside(Bubble bubble, Func<double, double> top, Func<double, double> half)
    {
        const double skin = 1.2;
        var across = (bubble.X - 50) / half(bubble.Y);
        return bubble.Y + bubble.Reach + skin < SeenCut.Floor
            && Math.Abs(bubble.X - 50) + bubble.Reach + skin < half(bubble.Y + bubble.Reach)
            && bubble.Y - bubble.Reach - skin > top(across)
            && bubble.Y - bubble.Reach - skin > top(Math.Min(1, across + (bubble.Reach / half(bubble.Y))))
            && bubble.Y - bubble.Reach - skin > top(Math.Max(-1, across - (bubble.Reach / half(bubble.Y))));
    }

    private static double Distance(Bubble one, Bubble other) =>
        Math.Sqrt(((one.X - other.X) * (one.X - other.X)) + ((one.Y - other.Y) * (one.Y - other.Y)));
}
