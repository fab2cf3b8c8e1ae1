namespace ClassKit.CellFormulas.Syntax;

/// <summary>What the language of cells has and is not evaluated.</summary>
public enum Construct
{
    /// <summary>A reference to a table by the names of its columns, in a form that is not read.</summary>
    TableReference,

    /// <summary>A reference through several sheets.</summary>
    SeveralSheets,

    /// <summary>A reference to another workbook.</summary>
    OtherWorkbook,

    /// <summary>A function of another workbook.</summary>
    OtherWorkbooksFunction,

    /// <summary>A macro.</summary>
    Macro,

    /// <summary>A function that is written down in the formula.</summary>
    Lambda,

    /// <summary>An error value that newer programs have.</summary>
    NewerError,
}
