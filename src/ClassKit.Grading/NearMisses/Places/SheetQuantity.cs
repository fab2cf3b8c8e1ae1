using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.NearMisses.Places;

/// <summary>A number on the student's sheet that a formula may use.</summary>
/// <param name="Id">The name that keys use.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="IsShare">True for a part of a whole, so that what is left of it, or the whole with it, may be meant.</param>
internal sealed record SheetQuantity(string Id, Unit Unit, bool IsShare)
{
    /// <summary>
    /// Those that can be used before a part is answered: the givens and the answers before it, in the order in which they stand.
    /// </summary>
    public static IReadOnlyList<SheetQuantity> Before(Exercise exercise, Part part) =>
        [
            .. exercise.Givens.Select(given => new SheetQuantity(
                given.Id,
                given.Unit,
                given.Unit.IsPercent || (given.Unit.IsNone && given.To < 1)
            )),
            .. exercise
                .Parts.TakeWhile(other => other != part)
                .Where(other => other.IsNumber)
                .Select(other => new SheetQuantity(other.Id, other.Unit, other.Unit.IsPercent)),
        ];
}
