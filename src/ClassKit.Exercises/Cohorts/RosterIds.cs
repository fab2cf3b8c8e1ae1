namespace ClassKit.Exercises.Cohorts;

/// <summary>Where the students' ids are from.</summary>
public enum RosterIds
{
    /// <summary>From a column of ids.</summary>
    Column,

    /// <summary>Made of what stands before the @ of the address, for want of a column of ids.</summary>
    Email,

    /// <summary>Made of the name, for want of ids and addresses.</summary>
    Name,
}
