using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Attacks;

/// <summary>Ways out of the folder, in every place of every address that names something.</summary>
public sealed class PathTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private static readonly string[] Tricks =
    [
        "..",
        "%2e%2e",
        "..%2f..%2f..%2fetc%2fpasswd",
        "..%5c..%5cwindows%5cwin.ini",
        "%2fetc%2fpasswd",
        "%252e%252e%252fetc%252fpasswd",
        "class.md%00",
        "shipped%3a%2flessons",
        ".classkit-desk",
        "%c0%ae%c0%ae",
        "C%3a%5c",
        "dealt.json",
    ];

    [Fact]
    public async Task No_address_leads_out_of_the_folder()
    {
        var named = desk.Routes.Where(route => route.Path.Contains('{', StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(named);
        var tried = 0;
        foreach (var (path, methods) in named)
        {
            var steps = path.Split('/');
            foreach (var (at, _) in steps.Index().Where(step => step.Item[0] == '{'))
            {
                foreach (var trick in Trials.Some(Tricks, 3, tried++))
                {
                    var address = string.Join(
                        '/',
                        steps.Select(
                            (step, here) =>
                                here == at ? trick
                                : step == "{class}" ? "class"
                                : step == "{lesson}" ? "one-tin-three-lifts"
                                : step.Trim('{', '}')
                        )
                    );
                    using var answer = await desk.Client.SendAsync(
                        methods.Contains("POST") ? desk.Request(address, []) : desk.Request(address, null)
                    );
                    var text = await answer.Content.ReadAsStringAsync();
                    Assert.True(
                        (int)answer.StatusCode is 404 or 303 or 400 or 403 or 405
                            || (trick.Trim('.').Length == 0 && (int)answer.StatusCode == 200)
                            || trick == "%2e%2e",
                        $"{address}: {answer.StatusCode}"
                    );
                    Assert.DoesNotContain("root:", text, StringComparison.Ordinal);
                }
            }
        }
    }
}
