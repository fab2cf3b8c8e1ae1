using ClassKit.Grading.Findings;
using ClassKit.Wording.Files;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Files;

public sealed class UncountedWordsTests
{
    private static readonly OtherDeal FollowUp = new(OtherDealKind.FollowUp, "K7M-4RX9", "Follow-up to Breads", null);

    public static TheoryData<Uncounted, string> Said =>
        new()
        {
            { new Uncounted.OfNobody("Tuesday bakers"), "was not dealt to anyone in Tuesday bakers" },
            { new Uncounted.Copy(new("a/ada.xlsx")), "The same file as a/ada.xlsx, byte for byte, which was graded." },
            {
                new Uncounted.OtherVersion(
                    new("ada", "Ada Berg"),
                    1.5m,
                    4,
                    new("ada (1).xlsx"),
                    new WhyThatVersion.Newer(new(2026, 3, 2, 10, 0, 0), new(2026, 3, 2, 9, 0, 0))
                ),
                "Another version of Ada Berg's work, worth 1.5 of 4 points; ada (1).xlsx was graded because it was changed last, 2026-03-02 10:00:00, and this one 2026-03-02 09:00:00."
            },
            {
                new Uncounted.OfOtherDeal(FollowUp, "Breads", "T2P-8WQ3"),
                "This workbook is from follow-up practice, deal K7M-4RX9, so it was not graded and cost no points. Please hand in the workbook for “Breads” with the deal code T2P-8WQ3 on its first sheet."
            },
            { new Uncounted.OfOtherDeal(new(OtherDealKind.Unmarked, null, null, null), "Breads", "T2P-8WQ3"), "It carries no deal code" },
        };

    [Theory]
    [MemberData(nameof(Said))]
    public void A_reason_is_said_with_its_files_and_numbers(Uncounted why, string words) =>
        Assert.Contains(words, UncountedWords.Of(why), StringComparison.Ordinal);

    [Fact]
    public void Every_reason_there_is_has_words()
    {
        Assert.All(Every.Of<Uncounted>(), why => Assert.NotEmpty(UncountedWords.Of(why)));
        Assert.All(Every.Of<WhyThatVersion>(), because =>
            Assert.NotEmpty(UncountedWords.Of(new Uncounted.OtherVersion(new("ada", "Ada Berg"), 1, 2, new("ada.xlsx"), because)))
        );
    }
}
