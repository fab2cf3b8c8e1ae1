namespace ClassKit.BenchSums.Inputs;

/// <summary>What a sum does about an input that nobody typed.</summary>
public enum InputNeed
{
    /// <summary>It cannot do without.</summary>
    Required,

    /// <summary>It takes the example, which is usual.</summary>
    Usual,

    /// <summary>It leaves out what the input would have added.</summary>
    Optional,
}
