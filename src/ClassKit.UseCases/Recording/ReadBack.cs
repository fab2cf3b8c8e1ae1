namespace ClassKit.UseCases.Recording;

/// <summary>A record that was filled from tables.</summary>
/// <param name="Rows">How many rows were read, headers among them.</param>
public sealed record ReadBack(int Rows);
