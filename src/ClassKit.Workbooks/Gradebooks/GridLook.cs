using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>What tells the two grids apart.</summary>
/// <param name="Title">The words in the band.</param>
/// <param name="PartWidth">How wide the column of a part is at least, in characters.</param>
/// <param name="PartAlignment">How the columns of parts are aligned.</param>
/// <param name="LastColumn">The last column of the sheet.</param>
internal sealed record GridLook(string Title, double PartWidth, XLAlignmentHorizontalValues PartAlignment, int LastColumn);
