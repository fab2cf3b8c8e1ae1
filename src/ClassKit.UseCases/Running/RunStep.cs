namespace ClassKit.UseCases;

/// <summary>What a run is at. A front has its own words for each.</summary>
public enum RunStep
{
    /// <summary>Reads what was authored; counts files.</summary>
    ReadingContent,

    /// <summary>Draws exercises on trial; counts exercises.</summary>
    ProvingExercises,

    /// <summary>Plans the class at its benches; counts nothing.</summary>
    PlanningBenches,

    /// <summary>Draws everybody's numbers; counts nothing.</summary>
    DrawingVariants,

    /// <summary>Fills in an invented class's workbooks; counts students.</summary>
    FillingIn,

    /// <summary>Reads and judges what came back; counts files.</summary>
    Judging,

    /// <summary>Makes the files of a result; counts files.</summary>
    MakingFiles,
}
