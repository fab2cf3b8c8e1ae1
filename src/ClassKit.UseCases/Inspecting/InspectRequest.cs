using ClassKit.UseCases.Intake;

namespace ClassKit.UseCases.Inspecting;

/// <summary>What inspecting takes.</summary>
/// <param name="Workbook">The workbook; messages and the result name it by its path.</param>
public sealed record InspectRequest(Upload Workbook);
