namespace ClassKit.UseCases.Output;

/// <summary>Something to be added at the end of a file of the instructor's, of which no byte changes otherwise.</summary>
/// <param name="File">The file; made if it is not there.</param>
/// <param name="Bytes">What is added.</param>
public sealed record Addition(string File, byte[] Bytes);
