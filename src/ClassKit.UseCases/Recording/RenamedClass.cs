namespace ClassKit.UseCases.Recording;

/// <summary>What became of a class's name on record.</summary>
/// <param name="Name">What it is called now.</param>
/// <param name="IsOnRecord">False where nothing of the class is on record, and so nothing was written.</param>
public sealed record RenamedClass(string Name, bool IsOnRecord);
