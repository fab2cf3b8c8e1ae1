using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.Tests.Sources;

public sealed class DiagnosticTests
{
    /// <summary>What a system says of a file is a sentence already.</summary>
    [Theory]
    [InlineData("Access to the path '/x' is denied.", "a.md: Access to the path '/x' is denied. Do this.")]
    [InlineData("There is no such file", "a.md: There is no such file. Do this.")]
    [InlineData("It begins with 'A loaf...'", "a.md: It begins with 'A loaf...'. Do this.")]
    public void Between_what_was_found_and_what_to_do_stands_one_full_stop(string found, string said) =>
        Assert.Equal(said, new Diagnostic("a.md", null, found, "Do this.").ToString());
}
