using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>The whole record is to be written out.</summary>
/// <param name="Look">A look into the record, which stays open until the files are written.</param>
public sealed record WriteOutRequest(RecordSession Look);
