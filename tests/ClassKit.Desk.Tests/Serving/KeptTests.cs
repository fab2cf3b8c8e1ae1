using ClassKit.Desk.Serving;

namespace ClassKit.Desk.Tests.Serving;

/// <summary>What the desk has at hand: results go when there are too many, what somebody is in the middle of never does.</summary>
public sealed class KeptTests
{
    [Fact]
    public void What_was_begun_outlives_any_number_of_results()
    {
        var kept = new Kept();
        kept.Begin("the drawn set", "as it is", "a draft");
        for (var at = 0; at < 1000; at++)
            kept.Put($"round {at}", "as it is", "looked at");

        Assert.Equal("a draft", kept.Begun<string>("the drawn set", "as it is"));
        Assert.Null(kept.Begun<string>("the drawn set", "changed meanwhile"));
        Assert.Null(kept.Begun<string>("another", "as it is"));
    }

    [Fact]
    public void Results_that_are_asked_for_stay_and_the_oldest_goes()
    {
        var kept = new Kept();
        kept.Put("in use", "1", "a result");
        kept.Put("out of use", "1", "a result");
        for (var at = 0; at < 200; at++)
        {
            kept.Put($"round {at}", "1", "looked at");
            Assert.Equal("a result", kept.Get<string>("in use", "1"));
        }

        Assert.Null(kept.Get<string>("out of use", "1"));
        Assert.Null(kept.Get<string>("in use", "2"));
        Assert.Equal("made anew", kept.Get("in use", "2", () => "made anew"));
    }
}
