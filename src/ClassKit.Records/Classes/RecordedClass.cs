namespace ClassKit.Records.Classes;

/// <summary>A class on record.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Name">As its profile calls it; unique in the record.</param>
public sealed record RecordedClass(long Id, string Name);
