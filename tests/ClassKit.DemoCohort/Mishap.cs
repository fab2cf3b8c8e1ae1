namespace ClassKit.DemoCohort;

/// <summary>What can happen to a workbook on its way.</summary>
public enum Mishap
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A photograph of the dough is pasted in.</summary>
    PicturePasted,

    /// <summary>A row is inserted above an answer.</summary>
    RowInserted,

    /// <summary>A given is overwritten.</summary>
    GivenOverwritten,

    /// <summary>The upload breaks off half-way.</summary>
    Truncated,

    /// <summary>The file is something else with a workbook's name.</summary>
    NoWorkbook,
}
