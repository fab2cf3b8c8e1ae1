using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;

namespace ClassKit.UseCases.Inspecting;

/// <summary>What was found of one formula cell.</summary>
/// <param name="Cell">Such as <c>B5</c>.</param>
/// <param name="Formula">With its leading <c>=</c>.</param>
/// <param name="Stored">What some program computed last, as the file has it.</param>
/// <param name="Computed">What we compute; blank if we cannot.</param>
/// <param name="Result">How the two compare.</param>
/// <param name="Reason">Why there is nothing to compare; null otherwise.</param>
public sealed record InspectedCell(
    string Cell,
    string Formula,
    CellValue Stored,
    CellValue Computed,
    InspectionResult Result,
    Obstacle? Reason
);
