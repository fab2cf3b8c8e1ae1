namespace ClassKit.Pages.Benches;

/// <summary>Finds each label of a row a place where it overprints nothing: on its bar, beside it, or on a line of its own below.</summary>
/// <remarks>
/// Reckoned for the narrowest drawing. On a wider one anchors move apart and letters do not grow, so that what is apart here stays apart.
/// </remarks>
/// <param name="periodMinutes">What the drawing's width stands for; above 0.</param>
internal sealed class TimelineLabels(int periodMinutes)
{
    /// <summary>The narrowest drawing, as the stylesheet has it.</summary>
    public const double NarrowestWidth = 800;

    /// <summary>Of the drawing's width, left of the first minute: the rows' names stand there. On a phone more than half is left for bars.</summary>
    public const double Names = 0.185;

    /// <summary>Of the drawing's width, from the first minute to the last, which needs room for its number too.</summary>
    public const double Span = 1 - Names - 0.02;

    /// <summary>What a letter takes in pixels, with some room to spare.</summary>
    public const double LetterWidth = 7.2;

    private const double Gap = 5;

    /// <summary>
    /// So many letters of a row's name stand on one line: what is longer takes another, and is not in the way of anything.
    /// </summary>
    public const int LettersOfAName = 20;

    /// <summary>The bars with their labels, in order.</summary>
    public IReadOnlyList<TimelinePiece> Place(IReadOnlyList<TimelineBar> bars)
    {
        List<List<(double From, double To)>> taken =
        [
            [.. bars.Select(bar => (X(bar.Start), X(bar.End)))],
        ];
        return
        [
            .. Runs(bars)
                .SelectMany(run =>
                    run.Count > 1 && run.Any(bar => !Fits(bar.Short, bar))
                        ? [new(run, Place(Joined(run), taken))]
                        : run.Select(bar => new TimelinePiece([bar], Place(bar, taken)))
                ),
        ];
    }

    /// <summary>
    /// What is set aside, named above its minutes: its last two meet at the boundary between them, so that both stand on one line.
    /// </summary>
    public IReadOnlyList<TimelineLabel> PlaceAbove(IReadOnlyList<(int From, int To, string Text)> spans)
    {
        var shift = spans.Count == 0 ? 0 : Math.Min(0, NarrowestWidth - X(spans[^1].From) - Gap - Width(spans[^1].Text));
        return
        [
            .. spans
                .Index()
                .Select(each =>
                    each.Index == spans.Count - 2 && each.Item.To == spans[^1].From
                        ? new TimelineLabel(each.Item.Text, each.Item.To, shift - Gap, "end", 0, false)
                        : new TimelineLabel(
                            each.Item.Text,
                            each.Item.From,
                            (each.Index == spans.Count - 1 ? shift : 0) + Gap,
                            "start",
                            0,
                            false
                        )
                ),
        ];
    }

    /// <summary>Hands that go from step to step are one run; every other bar is one by itself.</summary>
    private static IEnumerable<IReadOnlyList<TimelineBar>> Runs(IReadOnlyList<TimelineBar> bars)
    {
        for (var at = 0; at < bars.Count; )
        {
            var end = at + 1;
            while (
                end < bars.Count
                && bars[at].Kind == BarKind.HandsOn
                && bars[end].Kind == BarKind.HandsOn
                && bars[end].Start == bars[end - 1].End
            )
                end++;
            yield return [.. bars.Skip(at).Take(end - at)];
            at = end;
        }
    }

    /// <summary>"1–4".</summary>
    private static TimelineBar Joined(IReadOnlyList<TimelineBar> run) =>
        new("", $"{run[0].Short}–{run[^1].Short}", run[0].Start, run[^1].End, BarKind.HandsOn);

    private TimelineLabel? Place(TimelineBar bar, List<List<(double From, double To)>> taken)
    {
        string[] texts = [.. new[] { $"{bar.Short} {bar.Label}".Trim(), bar.Short }.Where(text => text.Length > 0).Distinct()];
        if (texts.Length == 0)
            return null;
        if (bar.Kind != BarKind.Shown && texts.FirstOrDefault(text => Fits(text, bar)) is { } inside)
            return new(inside, (bar.Start + bar.End) / 2.0, 0, "middle", 0, true);
        // Whatever is shown has no other place for its name; a step's number is told by the card.
        var beside = bar.Kind == BarKind.Shown ? texts[0] : texts[^1];
        var width = Width(beside);
        if (Take(taken[0], X(bar.End) + Gap, X(bar.End) + Gap + width))
            return new(beside, bar.End, Gap, "start", 0, false);
        if (Take(taken[0], X(bar.Start) - Gap - width, X(bar.Start) - Gap))
            return new(beside, bar.Start, -Gap, "end", 0, false);
        // Below it begins with its bar, or ends with it where the drawing ends.
        return X(bar.Start) + width <= NarrowestWidth
            ? new(beside, bar.Start, 0, "start", LaneFor(taken, X(bar.Start), X(bar.Start) + width), false)
            : new(beside, bar.End, 0, "end", LaneFor(taken, X(bar.End) - width, X(bar.End)), false);
    }

    private bool Fits(string text, TimelineBar bar) => text.Length > 0 && Width(text) + 2 <= X(bar.End) - X(bar.Start);

    private int LaneFor(List<List<(double From, double To)>> taken, double from, double to)
    {
        for (var lane = 1; ; lane++)
        {
            if (lane == taken.Count)
                taken.Add([]);
            if (Take(taken[lane], from, to, everywhere: true))
                return lane;
        }
    }

    /// <summary>Takes a place if it is free and on the drawing, right of the names.</summary>
    private bool Take(List<(double From, double To)> line, double from, double to, bool everywhere = false)
    {
        if (
            (!everywhere && (from < X(0) || to > NarrowestWidth))
            || line.Exists(other => from < other.To + Gap / 2 && other.From < to + Gap / 2)
        )
            return false;
        line.Add((from, to));
        return true;
    }

    private static double Width(string text) => text.Length * LetterWidth;

    private double X(double minute) => (Names + minute / periodMinutes * Span) * NarrowestWidth;
}
