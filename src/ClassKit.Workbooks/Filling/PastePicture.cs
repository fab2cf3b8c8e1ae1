using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Workbooks.Filling;

/// <summary>Pastes a small picture, as of a dough.</summary>
/// <param name="TopLeft">The cell under its top left corner, counted after all other edits.</param>
public sealed record PastePicture(CellAddress TopLeft) : WorkbookEdit;
