using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Tests.Numbers;

public sealed class PhrasesTests
{
    /// <summary>“Ifeoma Eze, Fuentes Vidal, Jorge, Katarzyna” read as five people.</summary>
    [Fact]
    public void Names_with_commas_are_told_apart_by_semicolons()
    {
        string[] names = ["Ifeoma Eze", "Fuentes Vidal, Jorge", "Katarzyna Nowak"];

        Assert.Equal("Ifeoma Eze; Fuentes Vidal, Jorge and Katarzyna Nowak", Phrases.Names(names));
        Assert.Equal("Ifeoma Eze; Fuentes Vidal, Jorge; Katarzyna Nowak", Phrases.Some(names));
        Assert.Equal("Ada, Ben and Cleo", Phrases.Names(["Ada", "Ben", "Cleo"]));
    }
}
