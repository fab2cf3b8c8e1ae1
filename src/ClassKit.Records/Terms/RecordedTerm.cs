using ClassKit.Records.Classes;

namespace ClassKit.Records.Terms;

/// <summary>A term of a class on record.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Class">The class.</param>
/// <param name="Title">What it is called; unique in its class.</param>
/// <param name="Begins">Its first day; null where nobody has said.</param>
/// <param name="Ends">Its last day; null where nobody has said.</param>
public sealed record RecordedTerm(long Id, RecordedClass Class, string Title, DateOnly? Begins, DateOnly? Ends);
