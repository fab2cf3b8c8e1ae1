using ClassKit.BenchPlans.Classes;

namespace ClassKit.Lessons.Authored;

/// <summary>What a step takes besides time.</summary>
/// <param name="People">How many have their hands in it; 0 if nobody needs to stand by.</param>
public sealed record StepWork(int People)
{
    /// <summary>One pair of hands, nothing shared, and the next step within a few minutes.</summary>
    public static StepWork Usual { get; } = new(1);

    /// <summary>The shared equipment that it occupies.</summary>
    public IReadOnlyList<EquipmentCount> Uses { get; init; } = [];

    /// <summary>How many places in an oven a team's pieces take; those of a steamer and the like are among what it uses.</summary>
    public int OvenPlaces { get; init; } = 1;

    /// <summary>True if the method says how many of them it takes.</summary>
    public bool StatesOvenPlaces { get; init; }

    /// <summary>True if the oven stays shut from the beginning of the bake to its end.</summary>
    public bool DoorShut { get; init; }

    /// <summary>True if the oven of the bake that follows is already needed, hot: for a tin that heats in it.</summary>
    public bool OvenReady { get; init; }

    /// <summary>How long the dough may stand before the next step.</summary>
    public WaitWindow Wait { get; init; } = WaitWindow.Usual;

    /// <summary>The ingredients that it brings to another temperature before they are mixed.</summary>
    public IReadOnlyList<IngredientHeat> Heats { get; init; } = [];

    /// <summary>True if the method says that wet meets dry in it, whatever it is called.</summary>
    public bool Mixes { get; init; }

    /// <summary>True if what is already baked is heated again.</summary>
    public bool Reheats { get; init; }

    /// <summary>True if the bread keeps until the next day after this step.</summary>
    public bool KeepsOvernight { get; init; }
}
