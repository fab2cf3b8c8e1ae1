namespace ClassKit.Pages.Packs;

/// <summary>Who reads a page or workbook of a pack.</summary>
public enum Readers
{
    /// <summary>
    /// Students, or anybody who passes by: nothing of what the class profile says about a student's health may change a byte of it.
    /// </summary>
    Everybody,

    /// <summary>The instructor and whoever orders: no more of a student's health than everybody reads.</summary>
    WhoeverOrders,

    /// <summary>The instructor. Nobody else may see what the class must keep away from.</summary>
    InstructorAlone,
}
