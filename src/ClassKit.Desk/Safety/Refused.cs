namespace ClassKit.Desk.Safety;

/// <summary>Why a request is not answered.</summary>
/// <param name="Status">As HTTP has it.</param>
/// <param name="Why">For the instructor, should they see it.</param>
internal sealed record Refused(int Status, string Why);
