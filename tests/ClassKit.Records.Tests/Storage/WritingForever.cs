using ClassKit.Records.Tests.Samples;

namespace ClassKit.Records.Tests.Storage;

/// <summary>Runs only in a process that <see cref="Writer"/> started.</summary>
public class WritingForever
{
    [Fact]
    public void Until_it_is_ended()
    {
        if (Environment.GetEnvironmentVariable(Writer.Variable) is { Length: > 0 } file)
            Writer.WriteForever(file);
    }
}
