using ClassKit.Terms.Work;

namespace ClassKit.Records.Terms;

/// <summary>A work of a term on record.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Place">Its place in the term, counted from 0.</param>
/// <param name="Assignment">What it is; its id is its title.</param>
/// <param name="Assigned">When it was set; null where nobody has said.</param>
/// <param name="Due">When it was due; null where nobody has said.</param>
public sealed record RecordedWork(long Id, int Place, Assignment Assignment, DateOnly? Assigned, DateOnly? Due);
