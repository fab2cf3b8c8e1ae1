namespace ClassKit.UseCases.Output.Writing;

/// <summary>Where a command writes.</summary>
/// <param name="Folder">As the user named it.</param>
/// <param name="Kind">Which command the files come from; a folder of another kind is refused.</param>
/// <param name="Inputs">All that the command reads: neither may the folder lie in one of them, nor one of them in it.</param>
public sealed record OutputTarget(string Folder, string Kind, params IReadOnlyList<string?> Inputs);
