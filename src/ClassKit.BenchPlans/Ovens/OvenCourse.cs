using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.Ovens;

/// <summary>What one oven is set to and holds, minute by minute, from when it is switched on until nothing more bakes in it.</summary>
/// <param name="Oven">Which oven, counted from 1.</param>
/// <param name="Spans">In order of time, without gaps; empty if nothing bakes in it.</param>
public sealed record OvenCourse(int Oven, IReadOnlyList<OvenSpan> Spans)
{
    /// <summary>The course of every oven that is used.</summary>
    public static IReadOnlyList<OvenCourse> Of(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. Enumerable.Range(1, plan.Class.Ovens.Count).Select(oven => Of(plan, oven)).Where(course => course.Spans.Count > 0)];
    }

    /// <summary>What the dial says in a minute; null while the oven is off.</summary>
    public Temperature? DialAt(int minute) => Spans.FirstOrDefault(span => span.From <= minute && minute < span.To)?.Dial;

    private static OvenCourse Of(BenchPlan plan, int oven)
    {
        var steps = plan.Steps.Where(step => step.Oven == oven && step.Minutes > 0).ToArray();
        if (steps.Length == 0)
            return new(oven, []);
        // From cold it is switched on in time and not sooner; between two bakes it is set as soon as it is empty.
        var on = Math.Max(0, plan.FreeAt(steps.Min(step => step.Start) - plan.Class.Ovens.HeatUpMinutes));
        var moments = steps.SelectMany(step => new[] { step.Start, step.End }).Append(on).Distinct().Order().ToArray();
        var spans = new List<OvenSpan>();
        foreach (var (from, to) in moments.Zip(moments.Skip(1)))
        {
            PlannedStep[] inside = [.. steps.Where(step => step.Start <= from && from < step.End)];
            var next = inside.Length > 0 ? inside[0] : steps.Where(step => step.Start >= to).MinBy(step => step.Start)!;
            var span = new OvenSpan(
                from,
                to,
                plan.Class.Breads[next.Load.Bread].Steps[next.Step].Oven!.Temperature,
                [.. inside.Select(step => step.Load)]
            );
            if (spans.Count > 0 && spans[^1].GoesOnAs(span))
                spans[^1] = spans[^1] with { To = to };
            else
                spans.Add(span);
        }
        return new(oven, spans);
    }
}
