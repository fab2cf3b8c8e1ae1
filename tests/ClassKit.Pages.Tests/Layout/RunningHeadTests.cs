using ClassKit.Pages.Layout;

namespace ClassKit.Pages.Tests.Layout;

public sealed class RunningHeadTests
{
    [Fact]
    public void Names_keep_their_accents() =>
        Assert.Contains("\"Ana Sofía Núñez\"", RunningHead.Css("Ana Sofía Núñez"), StringComparison.Ordinal);

    /// <summary>CSS Syntax 3, 4.3.7: an escape is a backslash, the code point in hexadecimal, and a space.</summary>
    [Fact]
    public void A_name_can_end_neither_the_string_nor_the_stylesheet() =>
        Assert.Contains("\"\\22 \\3c \\2f style\\3e \\5c a\"", RunningHead.Css("\"</style>\\a"), StringComparison.Ordinal);
}
