namespace ClassKit.Pages.Tests;

/// <summary>Writes every sample page to a folder, to be looked at: set CLASSKIT_PAGES_OUT to the folder.</summary>
public sealed class PageWriting
{
    [Fact]
    public void Sample_pages_can_be_written_out_to_look_at()
    {
        var folder = Environment.GetEnvironmentVariable("CLASSKIT_PAGES_OUT");
        Assert.SkipUnless(folder is not null, "CLASSKIT_PAGES_OUT names no folder.");
        Directory.CreateDirectory(folder!);
        foreach (var (name, html) in Samples.SamplePages.All)
            File.WriteAllText(Path.Combine(folder!, name), html);
    }
}
