namespace ClassKit.CellFormulas.Calls;

/// <summary>How a function takes an argument.</summary>
internal enum Parameter
{
    /// <summary>
    /// One value. A range gives the cell in the formula's own row or column; over an array the function is applied to each element.
    /// </summary>
    Value,

    /// <summary>Whatever it is: a reference stays one.</summary>
    Range,

    /// <summary>As an array formula would have it: operators inside work element by element.</summary>
    Array,
}
