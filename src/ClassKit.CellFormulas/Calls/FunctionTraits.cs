namespace ClassKit.CellFormulas.Calls;

/// <summary>What is special about a function.</summary>
[Flags]
internal enum FunctionTraits
{
    None = 0,

    /// <summary>Evaluates only the arguments that it needs, and is mapped over an array only for the first one.</summary>
    Lazy = 1,

    /// <summary>Depends on the clock or on chance.</summary>
    Volatile = 2,

    /// <summary>Has a result where an argument is an error: it asks for errors, or passes over them.</summary>
    SeesErrors = 4,
}
