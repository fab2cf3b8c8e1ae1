using ClassKit.Baking;
using ClassKit.BenchPlans;

namespace ClassKit.Pages.Benches;

/// <summary>Loads of one bread that bake in one oven at the same time.</summary>
/// <param name="Bread">Which bread, counted from 0.</param>
/// <param name="Makers">Whose loads.</param>
/// <param name="Stages">The steps of one of them in the oven, with their times.</param>
/// <param name="From">The oven as they go in.</param>
internal sealed record OvenBake(int Bread, IReadOnlyList<Maker> Makers, IReadOnlyList<PlannedStep> Stages, Temperature From)
{
    public int Start => Stages[0].Start;

    public int End => Stages[^1].End;
}
