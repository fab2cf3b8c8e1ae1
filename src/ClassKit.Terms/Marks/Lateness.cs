namespace ClassKit.Terms.Marks;

/// <summary>Whether marked work came late, and who takes something off for it.</summary>
public enum Lateness
{
    /// <summary>It came in time.</summary>
    InTime,

    /// <summary>It came late; the rule of the term says what that costs.</summary>
    Late,

    /// <summary>It came late, and what that costs is out of its points already.</summary>
    LateAndSettled,
}
