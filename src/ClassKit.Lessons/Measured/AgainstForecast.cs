namespace ClassKit.Lessons.Measured;

/// <summary>How what a class measured lies to what was predicted.</summary>
public enum AgainstForecast
{
    /// <summary>Nothing was measured.</summary>
    NotMeasured,

    /// <summary>Nothing was predicted.</summary>
    NotPredicted,

    /// <summary>The class's mean is below the band.</summary>
    Less,

    /// <summary>It lies within the band.</summary>
    AsExpected,

    /// <summary>It is above the band.</summary>
    More,
}
