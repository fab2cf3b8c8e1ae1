using ClassKit.Records.Storage;

namespace ClassKit.Records.Changes;

/// <summary>A change that was made, with what it took the place of.</summary>
/// <param name="Change">Who, when and why.</param>
/// <param name="Rows">What was there before, of rows that were changed or taken away.</param>
public sealed record LoggedChange(Change Change, IReadOnlyList<ChangedRow> Rows);

/// <summary>A row that was changed or taken away.</summary>
/// <param name="Table">Where it stands.</param>
/// <param name="Student">Whose it is; null where it is nobody's.</param>
/// <param name="Before">What was there.</param>
/// <param name="After">What is there instead; null for nothing.</param>
public sealed record ChangedRow(string Table, string? Student, string Before, string? After);
