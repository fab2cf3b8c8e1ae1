namespace ClassKit.UseCases.Running;

/// <summary>What a run is at. A front has its own words for each.</summary>
public enum RunStep
{
    /// <summary>Reads what was authored; counts files.</summary>
    ReadingContent,

    /// <summary>Draws exercises on trial; counts exercises.</summary>
    ProvingExercises,

    /// <summary>Plans the class at its benches; counts nothing.</summary>
    PlanningBenches,

    /// <summary>Draws everybody's numbers; counts variants.</summary>
    DrawingVariants,

    /// <summary>Works out a sum of the bench; counts nothing.</summary>
    Reckoning,

    /// <summary>Computes the formulas of a workbook anew; counts cells.</summary>
    Recomputing,

    /// <summary>Puts grades into tables for a school's records; counts students.</summary>
    Tabulating,

    /// <summary>Weighs the marks of a term into grades; counts students.</summary>
    Weighing,

    /// <summary>Writes in the record; counts what is written at once.</summary>
    Recording,

    /// <summary>Fills in an invented class's workbooks; counts students.</summary>
    FillingIn,

    /// <summary>Reads and judges what came back; counts files.</summary>
    Judging,

    /// <summary>Lays out what an instructor marks on; counts nothing.</summary>
    LayingOut,

    /// <summary>Makes the files of a result; counts files.</summary>
    MakingFiles,
}
