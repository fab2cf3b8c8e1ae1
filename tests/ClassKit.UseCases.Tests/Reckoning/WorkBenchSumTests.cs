using ClassKit.BenchSums;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Results;
using ClassKit.UseCases.Reckoning;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Tests.Reckoning;

public class WorkBenchSumTests
{
    private static readonly BenchSum Price = BenchSumCatalogue.Find("price")!;

    /// <summary>The food-cost rule of the trade: cost over its share; 1.35 at 30 % is 4.50, worked by hand.</summary>
    [Fact]
    public void A_sum_is_worked_out_from_what_is_typed()
    {
        var (worked, problems) = WorkBenchSum.Run(new(Price, [new("food-cost", "1.35"), new("share", "30 %")]), Run.Unwatched);

        Assert.Empty(problems);
        Assert.Equal("4.50", QuantityText.Show(Assert.Single(worked!.Result.Lines).Quantity));
    }

    [Fact]
    public void A_problem_stands_at_the_input_it_is_about()
    {
        var (worked, problems) = WorkBenchSum.Run(new(Price, [new("food-cost", "cheap"), new("share", "30 %")]), Run.Unwatched);

        Assert.Null(worked);
        var problem = Assert.Single(problems);
        Assert.Equal("food-cost", problem.File);
        Assert.Contains("`cheap`", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sum_without_a_sensible_result_says_why()
    {
        var (worked, problems) = WorkBenchSum.Run(new(Price, [new("food-cost", "1"), new("share", "0 %")]), Run.Unwatched);

        Assert.Null(worked);
        Assert.Equal("price", Assert.Single(problems).File);
    }
}
