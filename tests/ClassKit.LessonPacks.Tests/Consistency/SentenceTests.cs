using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

public sealed class SentenceTests
{
    public static TheoryData<string> All => Kitchens.All;

    [Theory]
    [MemberData(nameof(All))]
    public void Every_sentence_of_a_pack_begins_with_a_capital_letter(string kitchen)
    {
        foreach (var (file, page) in Kitchens.Of(kitchen).Pages)
            Assert.Equal((file, ""), (file, string.Join('\n', Sentences.BeginningLow(page.DocumentElement.OuterHtml))));
    }
}
