using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;

namespace ClassKit.PracticeBank.Tests.Bank;

public sealed class ChoicesInDealtJsonTests
{
    private static readonly string[] Ids = ["which_butter", "order_of_a_loaf", "cut_popover", "what_is_left_over"];

    private static string Written { get; } =
        DealtJson.Write(
            Dealer
                .Deal(
                    "bank",
                    "Bank",
                    [.. Ids.Select(ShippedBank.Of)],
                    new("marks", "Marks", 0.4m, 1, 0, 0.6m),
                    new("Class", [new("s-1", "Student")]),
                    1
                )
                .Class!
        );

    [Fact]
    public void Options_are_still_there_when_a_deal_is_read_again_for_grading()
    {
        var again = DealtJson.Read("dealt.json", Written).Model!;

        foreach (var (before, after) in Ids.Select(ShippedBank.Of).Zip(again.Exercises))
        {
            foreach (var (one, other) in before.Parts.Zip(after.Parts))
            {
                Assert.Equal(
                    (one.Choice?.From.Id, one.Choice?.From.Kind, one.Choice?.Why),
                    (other.Choice?.From.Id, other.Choice?.From.Kind, other.Choice?.Why)
                );
                Assert.Equal(one.Choice?.From.Options ?? [], other.Choice?.From.Options ?? []);
                Assert.Equal(one.Written?.Text, other.Written?.Text);
            }
        }
        Assert.Equal(Written, DealtJson.Write(again));
    }

    [Theory]
    [InlineData("\"kind\": \"order\"", "\"kind\": \"shuffle\"", "no way to choose")]
    [InlineData("\"id\": \"by_pack\"", "\"id\": \"by_case\"", "two options that are one")]
    [InlineData("\"words\": \"Packs.\"", "\"words\": \"\"", "words that are missing")]
    [InlineData("\"words\": \"Packs.\"", "\"words\": \"Blocks.\"", "two options that are one")]
    public void A_record_that_somebody_changed_is_refused_with_the_reason(string written, string changed, string reason)
    {
        Assert.Contains(written, Written, StringComparison.Ordinal);

        var reading = DealtJson.Read("dealt.json", Written.Replace(written, changed, StringComparison.Ordinal));

        Assert.Null(reading.Model);
        Assert.Contains(reading.Problems, problem => problem.Found.Contains(reason, StringComparison.Ordinal));
    }

    /// <summary>One of the parts that share a list, changed by itself.</summary>
    [Fact]
    public void A_list_that_parts_share_is_one()
    {
        var at = Written.IndexOf("\"words\": \"Packs.\"", StringComparison.Ordinal);
        var reading = DealtJson.Read(
            "dealt.json",
            Written[..at]
                + Written[at..].Replace("\"words\": \"Packs.\"", "\"words\": \"Small packs.\"", StringComparison.Ordinal)[..0]
                + "\"words\": \"Small packs.\""
                + Written[(at + "\"words\": \"Packs.\"".Length)..]
        );

        Assert.Contains(reading.Problems, problem => problem.Found.Contains("a list of which there are two", StringComparison.Ordinal));
    }

    [Fact]
    public void An_answer_that_is_no_options_number_is_refused()
    {
        var reading = DealtJson.Read("dealt.json", ReplaceLastExpected(Written));

        Assert.Contains(reading.Problems, problem => problem.Found.Contains("no option", StringComparison.Ordinal));
    }

    private static string ReplaceLastExpected(string text)
    {
        var place = text.IndexOf("\"part\": \"verdict\"", StringComparison.Ordinal);
        var expected = text.IndexOf("\"expected\":", place, StringComparison.Ordinal);
        var end = text.IndexOfAny(['\n', '}', ','], expected);
        return text[..expected] + "\"expected\": 7" + text[end..];
    }
}
