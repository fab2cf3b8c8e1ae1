using ClassKit.BenchSums.Catalogue;

namespace ClassKit.Desk.Sums;

/// <summary>What a topic of bench sums is called.</summary>
internal static class TopicWords
{
    public static string Of(SumTopic topic) =>
        topic switch
        {
            SumTopic.Scaling => "Scaling",
            SumTopic.Temperature => "Dough temperature",
            SumTopic.Yeast => "Yeast and rises",
            SumTopic.Chemical => "Soda and baking powder",
            SumTopic.GasAndAltitude => "Gas and altitude",
            SumTopic.Measures => "Cups and spoons",
            SumTopic.Cost => "Cost",
            SumTopic.Safety => "Keeping food safe",
        };
}
