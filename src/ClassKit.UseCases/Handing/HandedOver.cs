namespace ClassKit.UseCases.Handing;

/// <summary>A lesson with all that it leads to, as one file.</summary>
/// <param name="Name">What the bundle is called: the lesson's folder, and <c>.zip</c>.</param>
/// <param name="Bytes">The bundle: the same for the same files, whenever and wherever it is made.</param>
/// <param name="Taken">The files in it, by their places in it.</param>
/// <param name="LeftOut">Files beside them that are not in it, by the same places.</param>
public sealed record HandedOver(string Name, byte[] Bytes, IReadOnlyList<string> Taken, IReadOnlyList<string> LeftOut);
