using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>Who changes the record, when and why: no use case knows the clock or the user by itself.</summary>
/// <param name="Now">When.</param>
/// <param name="Who">Who.</param>
/// <param name="Why">Why; may be empty.</param>
public sealed record Author(DateTimeOffset Now, string Who, string Why)
{
    internal Change Of(string what, string about) => new(Now, Who, what, about, Why);

    /// <summary>The day of the change.</summary>
    internal DateOnly Today => DateOnly.FromDateTime(Now.DateTime);
}
