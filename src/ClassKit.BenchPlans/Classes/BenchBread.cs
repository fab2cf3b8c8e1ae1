namespace ClassKit.BenchPlans.Classes;

/// <summary>A bread as work at the bench: its steps in order, one after the other.</summary>
/// <param name="Id">A stable short name: <c>popovers</c>.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Steps">In order; at least one. Steps in the oven that stand together follow each other at once, unless a wait is asked
/// between them; what stands between two such groups is done outside.</param>
public sealed record BenchBread(string Id, string Name, IReadOnlyList<BenchStep> Steps)
{
    /// <summary>True if the instructor makes one load for all, and the teams none.</summary>
    public bool LeftToInstructor { get; init; }

    /// <summary>
    /// The teams that make it, by their numbers from 1; null where every team does. Above none: what no team makes is left to the
    /// instructor.
    /// </summary>
    public IReadOnlyList<int>? Teams { get; init; }

    /// <summary>
    /// The bread whose series it belongs to, by its id: what is shown before a step of that one is shown before its own. Null for a bread
    /// of its own.
    /// </summary>
    public string? VariantOf { get; init; }

    /// <summary>True if it is made for a demonstration to show: how long it stands before the tasting matters to nobody.</summary>
    public bool IsForShow { get; init; }

    /// <summary>How many steps of its method are done before the class; those in <see cref="Steps"/> follow them.</summary>
    public int StepsDoneBefore { get; init; }

    /// <summary>How long it may stand ready before the tasting, in minutes; null where that does not matter.</summary>
    public int? KeepsMinutes { get; init; }

    /// <summary>Each time that it is in an oven, in order: two for what is baked, cooled and heated again.</summary>
    public IReadOnlyList<BakeSteps> Bakes
    {
        get
        {
            int[] from = [.. Enumerable.Range(0, Steps.Count).Where(at => Steps[at].Oven is not null && (at == 0 || !StaysInOven(at - 1)))];
            return
            [
                .. from.Select(first => new BakeSteps(first, Enumerable.Range(first, Steps.Count - first).First(at => !StaysInOven(at)))),
            ];
        }
    }

    /// <summary>
    /// True if it goes on in its oven from a step to the next. Where it has to wait in between it is out: par-baked, cooled and finished.
    /// </summary>
    /// <param name="at">The step, from 0.</param>
    public bool StaysInOven(int at) => StaysInOven(Steps, at);

    /// <inheritdoc cref="StaysInOven(int)"/>
    internal static bool StaysInOven(IReadOnlyList<BenchStep> steps, int at) =>
        at + 1 < steps.Count && steps[at] is { Oven: not null, Wait.MinMinutes: 0 } && steps[at + 1].Oven is not null;

    /// <summary>The first time that it is in an oven; null if it is not baked.</summary>
    public BakeSteps? Bake => Bakes.Count == 0 ? null : Bakes[0];

    /// <summary>The shortest that it takes from the first step to the last, waits that must be included; in minutes.</summary>
    public int ShortestMinutes => Steps.Sum(step => step.MinMinutes) + Steps.SkipLast(1).Sum(step => step.Wait.MinMinutes);

    /// <summary>True if all who have it in one oven must put it in together and take it out together.</summary>
    /// <param name="bake">One of <see cref="Bakes"/>.</param>
    /// <remarks>Because the door stays shut, or because the oven is turned up or down while it bakes.</remarks>
    public bool BakesTogether(BakeSteps bake)
    {
        OvenSetting[] settings = [.. Steps.Skip(bake.First).Take(bake.Count).Select(step => step.Oven!)];
        return settings.Any(setting => setting.DoorShut || setting.Temperature != settings[0].Temperature);
    }
}
