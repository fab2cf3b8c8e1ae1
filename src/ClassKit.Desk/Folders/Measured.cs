namespace ClassKit.Desk.Folders;

/// <summary>Where it lies what the teams of a class measured of a lesson.</summary>
/// <param name="Folder">All of it.</param>
public sealed record Measured(string Folder)
{
    /// <summary>What the teams brought back.</summary>
    public string Returned => Path.Combine(Folder, "returned");

    /// <summary>What it comes to.</summary>
    public string Drawn => Path.Combine(Folder, "drawn");
}
