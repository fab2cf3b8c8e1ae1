namespace ClassKit.Terms.Marks;

/// <summary>What a mark says of one sitting.</summary>
public enum MarkState
{
    /// <summary>Work was marked; it has points.</summary>
    Marked,

    /// <summary>The student was not there, and nothing excuses it.</summary>
    Absent,

    /// <summary>The student need not do it.</summary>
    Excused,

    /// <summary>It cannot be there yet.</summary>
    NotDue,
}
