using System.Net;
using System.Net.Sockets;
using System.Text;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Opening;
using ClassKit.Desk.Safety;
using ClassKit.Desk.Tests.Tools;
using Microsoft.AspNetCore.WebUtilities;

namespace ClassKit.Desk.Tests.Attacks;

/// <summary>
/// Who is not let in, against a desk that listens. What a browser sends on its own is as the Fetch standard (4.6, 2.2.7) and RFC 6265bis
/// have it.
/// </summary>
public sealed class GateTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task The_desks_own_page_is_let_in() => Assert.Equal(200, await desk.StatusAsync(desk.Request("", null)));

    [Fact]
    public void Only_the_loopback_is_listened_to() => Assert.True(IPAddress.IsLoopback(IPEndPoint.Parse(desk.Desk.Authority).Address));

    /// <summary>A page whose own name was made to point to this machine sends that name (DNS rebinding).</summary>
    [Theory]
    [InlineData("desk.example.org")]
    [InlineData("localhost")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.2")]
    public async Task Another_host_is_refused(string host)
    {
        var port = host.StartsWith("127.0.0.1", StringComparison.Ordinal) ? "" : ":" + IPEndPoint.Parse(desk.Desk.Authority).Port;
        var request = desk.Request("", null);
        request.Headers.Host = host + port;
        Assert.Equal(421, await desk.StatusAsync(request));
    }

    [Theory]
    [InlineData("http://desk.example.org")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("null")]
    [InlineData("file://")]
    public async Task Another_pages_origin_is_refused(string origin)
    {
        foreach (var request in new[] { desk.Request("", null), desk.Request("close", []) })
        {
            request.Headers.Remove("Origin");
            request.Headers.Add("Origin", origin);
            Assert.Equal(403, await desk.StatusAsync(request));
        }
    }

    [Fact]
    public async Task A_form_that_says_no_origin_is_refused()
    {
        var request = desk.Request("close", []);
        request.Headers.Remove("Origin");
        Assert.Equal(403, await desk.StatusAsync(request));
    }

    /// <summary>Another port of this machine is the same site to a browser, and still another page.</summary>
    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    public async Task A_link_or_a_frame_of_another_page_is_refused(string site)
    {
        var request = desk.Request("", null);
        request.Headers.Add("Sec-Fetch-Site", site);
        Assert.Equal(403, await desk.StatusAsync(request));
    }

    [Fact]
    public async Task Without_the_sessions_cookie_nothing_is_shown()
    {
        foreach (var cookie in new[] { null, "desk=", $"desk={new string('A', 43)}", $"other={desk.Desk.Keys.Session}" })
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, desk.Desk.Address);
            if (cookie is not null)
                request.Headers.Add("Cookie", cookie);
            using var answer = await desk.Client.SendAsync(request);
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
            Assert.DoesNotContain("Tuesday", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/enter")]
    [InlineData("/look/desk.css")]
    [InlineData("/AAAAAAAAAAAAAAAAAAAAAA/")]
    public async Task Outside_of_the_room_there_is_nothing(string path)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, $"http://{desk.Desk.Authority}{path}");
        request.Headers.Add("Cookie", $"desk={desk.Desk.Keys.Session}");
        Assert.Equal(404, await desk.StatusAsync(request));
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("OPTIONS")]
    [InlineData("TRACE")]
    public async Task Other_methods_are_refused(string method)
    {
        var request = desk.Request("", null);
        request.Method = new(method);
        Assert.Equal(405, await desk.StatusAsync(request));
    }

    [Fact]
    public async Task A_key_opens_once_and_gives_a_cookie_that_no_script_and_no_other_page_has()
    {
        await using var other = await OpenDesk.StartAsync(
            new FolderHolder(),
            new(),
            bug => Assert.Fail(bug.ToString()),
            () => RunningDesk.Now
        );
        foreach (
            var wrong in new[]
            {
                "",
                "?key=",
                "?key=" + WebEncoders.Base64UrlEncode(new byte[32]),
                $"?key={other.Keys.Key}&key={other.Keys.Key}",
            }
        )
            Assert.Equal(403, await desk.StatusAsync(new(HttpMethod.Get, other.Address + "enter" + wrong)));
        var entrance = other.Entrance;

        using (var entered = await desk.Client.GetAsync(entrance))
        {
            var cookie = Assert.Single(entered.Headers.GetValues("Set-Cookie")).ToLowerInvariant();
            Assert.Contains("; httponly", cookie, StringComparison.Ordinal);
            Assert.Contains("; samesite=strict", cookie, StringComparison.Ordinal);
            Assert.Contains($"; path=/{other.Keys.Room.ToLowerInvariant()}", cookie, StringComparison.Ordinal);
        }

        Assert.Equal(403, await desk.StatusAsync(new(HttpMethod.Get, entrance)));
    }

    /// <summary>
    /// Secrets of 128 bits and more (NIST SP 800-63B, 5.1.2.2 asks for 112 of random ones; from memory), and no two alike.
    /// </summary>
    [Fact]
    public void Secrets_are_long_and_differ()
    {
        string?[] secrets = [desk.Desk.Keys.Room, desk.Desk.Keys.Session, desk.Desk.Keys.FormToken, desk.Desk.Keys.Key];
        Assert.All(secrets, secret => Assert.True(WebEncoders.Base64UrlDecode(secret!).Length >= 16));
        Assert.Equal(secrets.Length, secrets.Distinct().Count());
    }

    [Fact]
    public async Task Whatever_changes_something_asks_for_the_token()
    {
        var changing = desk.Routes.Where(route => route.Methods.Contains("POST")).Select(route => route.Path).ToList();
        Assert.True(changing.Count > 2);
        foreach (var path in changing)
        {
            foreach (var token in new[] { null, "", new string('A', 43), desk.Desk.Keys.Session })
            {
                var request = desk.Request(path.Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal), []);
                request.Content = new FormUrlEncodedContent(token is null ? [] : [KeyValuePair.Create("token", token)]);
                Assert.True(await desk.StatusAsync(request) == 403, $"{path} with the token {token}");
                var packed = desk.Request(path, []);
                packed.Content = token is null
                    ? new MultipartFormDataContent()
                    : new MultipartFormDataContent { { new StringContent(token), "token" } };
                Assert.True(await desk.StatusAsync(packed) == 403, $"{path} in parts with the token {token}");
            }
        }
    }

    [Fact]
    public async Task Nothing_is_kept_framed_or_loaded_from_elsewhere()
    {
        foreach (var path in new[] { "", "sums", "sums/ice", "look/desk.css", "look/desk.js", "nothing-of-that-name" })
        {
            using var answer = await desk.Client.SendAsync(desk.Request(path, null));
            string Of(string name) => answer.Headers.TryGetValues(name, out var values) ? string.Join(",", values) : "";
            // The look is no word of anybody's: the last page has it when nothing is left to ask.
            Assert.Equal(path.StartsWith("look/", StringComparison.Ordinal) ? "max-age=86400, private" : "no-store", Of("Cache-Control"));
            Assert.Equal("nosniff", Of("X-Content-Type-Options"));
            Assert.Contains("default-src 'none'", Of("Content-Security-Policy"), StringComparison.Ordinal);
            Assert.Contains("frame-ancestors 'none'", Of("Content-Security-Policy"), StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe", Of("Content-Security-Policy"), StringComparison.Ordinal);
            Assert.Equal("", Of("Server"));
        }
    }

    [Fact]
    public async Task A_form_larger_than_any_of_ours_is_refused()
    {
        var request = desk.Request("begin", ("name", new string('a', 200_000)));
        Assert.InRange(await desk.StatusAsync(request), 400, 413);
    }

    /// <summary>Nobody holds a connection open by sending a byte now and then: the server gives up by itself.</summary>
    [Fact]
    public async Task A_form_that_comes_slower_than_any_browser_sends_is_given_up()
    {
        using var client = new TcpClient();
        await client.ConnectAsync(IPEndPoint.Parse(desk.Desk.Authority));
        await using var stream = client.GetStream();
        await stream.WriteAsync(
            Encoding.ASCII.GetBytes(
                $"POST /{desk.Desk.Keys.Room}/begin HTTP/1.1\r\nHost: {desk.Desk.Authority}\r\nOrigin: http://{desk.Desk.Authority}\r\nCookie: {Gate.Cookie}={desk.Desk.Keys.Session}\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 60000\r\n\r\nname=a"
            )
        );
        using var answer = new StreamReader(stream);
        Assert.DoesNotContain(" 200 ", await answer.ReadLineAsync() ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_desk_on_the_folder_is_told_so()
    {
        using var second = new FolderHolder();
        Assert.Contains("Another desk", second.Open(new(desk.Folder.Root))?.Found, StringComparison.Ordinal);
    }
}
