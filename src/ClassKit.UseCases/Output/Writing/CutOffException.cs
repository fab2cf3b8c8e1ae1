namespace ClassKit.UseCases.Output.Writing;

/// <summary>New files are in place in part and can be neither finished nor taken back now; the next run will.</summary>
internal sealed class CutOffException(Exception because) : IOException(because.Message, because);
