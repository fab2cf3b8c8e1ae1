using ClassKit.Baking.Cooking;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Cooking;

/// <summary>What one team's batch takes of a steamer whose places have a stated width.</summary>
/// <param name="Pieces">Of the batch.</param>
/// <param name="PieceMillimetres">As wide as one is predicted to become.</param>
/// <param name="PlaceMillimetres">Of one place, across.</param>
public sealed record SteamerLoad(int Pieces, double PieceMillimetres, double PlaceMillimetres)
{
    /// <summary>How many pieces lie in one place.</summary>
    public int ToAPlace => RoundPlace.Holds(PlaceMillimetres, PieceMillimetres);

    /// <summary>How many places the batch takes.</summary>
    public int Places => (Pieces + ToAPlace - 1) / ToAPlace;

    /// <summary>The load; null where the bread is not steamed, or the profile does not say how wide a place is.</summary>
    /// <param name="bread">What is steamed.</param>
    /// <param name="pieces">How many a team makes.</param>
    /// <param name="pieceMillimetres">As wide as one is predicted to become; null where that is not known, and what is written stands.</param>
    /// <param name="profile">The class.</param>
    public static SteamerLoad? Of(LessonFormula bread, int pieces, double? pieceMillimetres, ClassProfile profile)
    {
        ArgumentNullException.ThrowIfNull(bread);
        ArgumentNullException.ThrowIfNull(profile);
        return
            bread.Steps.Any(IsSteamed)
            && pieceMillimetres is { } wide
            && profile.ApplianceOf(EquipmentKind.Steamer).PlaceMillimetres is { } across
            ? new(pieces, wide, across)
            : null;
    }

    /// <summary>The bread with as many places as its batch takes, in place of those that are written.</summary>
    public LessonFormula In(LessonFormula bread)
    {
        ArgumentNullException.ThrowIfNull(bread);
        return bread with
        {
            Steps =
            [
                .. bread.Steps.Select(step =>
                    IsSteamed(step)
                        ? step with
                        {
                            Work = step.Work with
                            {
                                Uses =
                                [
                                    .. step.Work.Uses.Select(use => use.Kind == EquipmentKind.Steamer ? use with { Count = Places } : use),
                                ],
                            },
                        }
                        : step
                ),
            ],
        };
    }

    private static bool IsSteamed(MethodStep step) => step.Way == CookingWay.Steamer;
}
