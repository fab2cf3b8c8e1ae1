namespace ClassKit.Pages.Benches;

/// <summary>Finds each label of a row a place where it overprints nothing: on its bar, beside it, or on a line of its own below.</summary>
/// <remarks>
/// Reckoned for the narrowest drawing. On a wider one anchors move apart and letters do not grow, so that what is apart here stays apart.
/// </remarks>
/// <param name="periodMinutes">What the drawing's width stands for; above 0.</param>
internal sealed class TimelineLabels(int periodMinutes)
{
    /// <summary>The narrowest drawing, as the stylesheet has it.</summary>
    public const double NarrowestWidth = 640;

    /// <summary>Of the drawing's width, left of the first minute.</summary>
    public const double Margin = 0.012;

    /// <summary>Of the drawing's width, from the first minute to the last, which needs room for its number too.</summary>
    public const double Span = 1 - 2.5 * Margin;

    /// <summary>What a letter takes in pixels, with some room to spare.</summary>
    private const double LetterWidth = 7.2;

    private const double Gap = 5;

    /// <summary>One label for each bar, in order; null where a bar has nothing to say.</summary>
    public IReadOnlyList<TimelineLabel?> Place(IReadOnlyList<TimelineBar> bars)
    {
        List<List<(double From, double To)>> taken = [[.. bars.Select(bar => (X(bar.Start), X(bar.End)))]];
        return [.. bars.Select(bar => Place(bar, taken))];
    }

    /// <summary>Labels over the middle of their minutes, on as few lines as they need; no bars stand among them.</summary>
    public IReadOnlyList<TimelineLabel> PlaceAbove(IReadOnlyList<(int From, int To, string Text)> spans)
    {
        List<List<(double From, double To)>> taken = [[]];
        return
        [
            .. spans.Select(span =>
            {
                var (middle, half) = ((span.From + span.To) / 2.0, Width(span.Text) / 2);
                var inset = Math.Max(0, half - X(middle)) - Math.Max(0, X(middle) + half - NarrowestWidth);
                return new TimelineLabel(span.Text, middle, inset, "middle", LaneFor(taken, X(middle) + inset - half, X(middle) + inset + half, 0), false);
            }),
        ];
    }

    private TimelineLabel? Place(TimelineBar bar, List<List<(double From, double To)>> taken)
    {
        var text = bar.Kind == BarKind.Shown || bar.Label.Length == 0 ? bar.Short : bar.Label;
        if (text.Length == 0)
            return null;
        foreach (var inside in bar.Kind == BarKind.Shown ? [] : new[] { bar.Label, bar.Short })
        {
            if (inside.Length > 0 && Width(inside) + 2 <= X(bar.End) - X(bar.Start))
                return new(inside, (bar.Start + bar.End) / 2.0, 0, "middle", 0, true);
        }
        if (bar.Short.Length > 0)
            text = bar.Short;
        var width = Width(text);
        if (Take(taken[0], X(bar.End) + Gap, X(bar.End) + Gap + width))
            return new(text, bar.End, Gap, "start", 0, false);
        if (Take(taken[0], X(bar.Start) - Gap - width, X(bar.Start) - Gap))
            return new(text, bar.Start, -Gap, "end", 0, false);
        // Below it begins with its bar, or ends with it where the drawing ends.
        return X(bar.Start) + width <= NarrowestWidth
            ? new(text, bar.Start, 0, "start", LaneFor(taken, X(bar.Start), X(bar.Start) + width, 1), false)
            : new(text, bar.End, 0, "end", LaneFor(taken, X(bar.End) - width, X(bar.End), 1), false);
    }

    private static int LaneFor(List<List<(double From, double To)>> taken, double from, double to, int lane)
    {
        for (; ; lane++)
        {
            if (lane == taken.Count)
                taken.Add([]);
            if (Take(taken[lane], from, to, everywhere: true))
                return lane;
        }
    }

    /// <summary>Takes a place if it is free and on the drawing.</summary>
    private static bool Take(List<(double From, double To)> line, double from, double to, bool everywhere = false)
    {
        if ((!everywhere && (from < 0 || to > NarrowestWidth)) || line.Exists(other => from < other.To + Gap / 2 && other.From < to + Gap / 2))
            return false;
        line.Add((from, to));
        return true;
    }

    private static double Width(string text) => text.Length * LetterWidth;

    private double X(double minute) => (Margin + minute / periodMinutes * Span) * NarrowestWidth;
}
