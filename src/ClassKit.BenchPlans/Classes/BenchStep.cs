using ClassKit.Baking.Cooking;
using ClassKit.Baking.Quantities;

namespace ClassKit.BenchPlans.Classes;

/// <summary>One step of a bread: how long it takes and what it occupies meanwhile.</summary>
/// <param name="Name">A word or two: <c>First rise</c>.</param>
/// <param name="MinMinutes">The shortest it may be planned; 0 or more.</param>
/// <param name="MaxMinutes">The longest; at least <paramref name="MinMinutes"/>.</param>
public sealed record BenchStep(string Name, int MinMinutes, int MaxMinutes)
{
    /// <summary>How many of the team have their hands in it; 0 if nobody needs to stand by.</summary>
    public int People { get; init; } = 1;

    /// <summary>True if somebody's hands are in it.</summary>
    public bool IsHandsOn => People > 0;

    /// <summary>
    /// What it occupies besides an oven. What nobody stands by keeps its place until the next step begins: the dough waits where it is.
    /// </summary>
    public IReadOnlyList<EquipmentCount> Uses { get; init; } = [];

    /// <summary>The oven's setting; null outside the oven.</summary>
    public OvenSetting? Oven { get; init; }

    /// <summary>In what it is cooked, an oven or anything else; null where it is not cooked.</summary>
    public CookingWay? Way { get; init; }

    /// <summary>How hot that is, besides an oven: the fat of a fryer, a pan; null where it is not set, or where nothing cooks.</summary>
    public Temperature? CookedAt { get; init; }

    /// <summary>
    /// True if it goes into something hot besides an oven as the step begins, and comes out as it ends, with nobody by in between.
    /// </summary>
    public bool IsPutIn { get; init; }

    /// <summary>
    /// How long the dough may stand between this step and the next. Of a last step it says nothing: see
    /// <see cref="BenchBread.KeepsMinutes"/>.
    /// </summary>
    public WaitWindow Wait { get; init; } = WaitWindow.Usual;

    /// <summary>
    /// How many minutes from its beginning the bread has to be baked at the latest, because something in it came out of the refrigerator;
    /// null without such a limit.
    /// </summary>
    public int? BakedWithinMinutes { get; init; }

    /// <summary>
    /// How many minutes from its beginning the tasting has to begin at the latest, because something out of the refrigerator goes into or
    /// onto the bread behind its last cooking; null without such a limit.
    /// </summary>
    public int? ServedWithinMinutes { get; init; }

    /// <summary>True in a refrigerator or a freezer, where what must be kept cold is.</summary>
    public bool IsInTheCold { get; init; }

    /// <summary>What it brings to another temperature, and what has come out of the refrigerator for it beforehand.</summary>
    public IReadOnlyList<StepHeat> Heats { get; init; } = [];

    /// <summary>True if the bread keeps after this step, so that it and all before may be done the day before.</summary>
    public bool MayBeDoneAhead { get; init; }

    /// <summary>The temperature at which yeast raises the dough in this step; null where it does not.</summary>
    public Temperature? RiseAt { get; init; }
}
