namespace ClassKit.BenchPlans.Solving;

/// <summary>The groups of constraints of a bench plan.</summary>
public enum RuleKind
{
    /// <summary>Every team watches every demonstration, before it does what was shown; nobody sees to an oven meanwhile.</summary>
    Demonstrations,

    /// <summary>A team has so many people, and the instructor is one.</summary>
    People,

    /// <summary>The doughs of one bread neither wait nor take longer than they may.</summary>
    Windows,

    /// <summary>There are so many pieces of one kind of equipment.</summary>
    Equipment,

    /// <summary>There are so many ovens, with so many places, each at one temperature at a time.</summary>
    Ovens,

    /// <summary>All is ready when the tasting begins.</summary>
    Period,
}
