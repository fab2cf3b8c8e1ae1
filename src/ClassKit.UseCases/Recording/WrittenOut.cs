using ClassKit.Records.Storage;
using ClassKit.Records.Tables;

namespace ClassKit.UseCases.Recording;

/// <summary>The record as tables.</summary>
/// <param name="Look">The look through which they are read, still open.</param>
/// <param name="Tables">What there is.</param>
public sealed record WrittenOut(RecordSession Look, IReadOnlyList<TableShape> Tables);
