using ClassKit.Terms.Bench;

namespace ClassKit.Desk.Marks;

/// <summary>Marks that were brought back from the kitchen and not taken in yet.</summary>
/// <param name="File">Where the file would lie.</param>
/// <param name="Content">Its bytes.</param>
/// <param name="Sheet">What it says.</param>
/// <param name="Stands">What stands there already; null where that is nothing.</param>
internal sealed record BroughtBack(string File, byte[] Content, BenchSheet Sheet, BenchSheet? Stands);
