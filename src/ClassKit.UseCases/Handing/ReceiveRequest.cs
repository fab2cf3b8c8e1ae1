using ClassKit.UseCases.Intake;

namespace ClassKit.UseCases.Handing;

/// <summary>What receiving a lesson takes.</summary>
/// <param name="Bundle">The file that was handed over, from anybody.</param>
public sealed record ReceiveRequest(Upload Bundle);
