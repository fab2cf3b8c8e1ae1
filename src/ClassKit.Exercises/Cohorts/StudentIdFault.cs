namespace ClassKit.Exercises.Cohorts;

/// <summary>Why an id cannot be a student's.</summary>
public enum StudentIdFault
{
    /// <summary>
    /// It is not 1 to 64 letters a to z, digits, <c>-</c>, <c>_</c> and <c>.</c>, the first a letter or digit, the last no dot.
    /// </summary>
    Form,

    /// <summary>Windows keeps it for a device, and cannot have a file of that name.</summary>
    Device,
}
