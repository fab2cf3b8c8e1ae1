namespace ClassKit.DemoCohort;

/// <summary>A program that a returned workbook was saved with.</summary>
public enum OtherProgram
{
    /// <summary>As our own filler writes it: no program has recalculated anything.</summary>
    None,

    /// <summary>LibreOffice: every cell recalculated and every part rewritten.</summary>
    LibreOffice,

    /// <summary>openpyxl: every part rewritten, nothing recalculated, computed values dropped.</summary>
    OpenPyXl,
}
