using ClassKit.Desk.Folders;
using ClassKit.Desk.Opening;
using ClassKit.Desk.Safety;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Week;

/// <summary>A desk that was to be opened on a folder that is not there offers to begin it, or anything else that the first page offers.</summary>
public sealed class MissingFolderTests
{
    [Fact]
    public async Task A_folder_that_is_not_there_can_be_begun_where_it_was_named()
    {
        var place = Directory.CreateTempSubdirectory("classkit-desk-").FullName;
        var named = Path.Combine(place, "years", "My kitchen");
        var folders = new FolderHolder { Missing = named };
        await using var desk = await OpenDesk.StartAsync(folders, new(), bug => Assert.Fail(bug.ToString()), () => RunningDesk.Now);
        using var client = new HttpClient(new SocketsHttpHandler { UseCookies = false, AllowAutoRedirect = false });

        var page = await Sent(null, "");
        Assert.Contains("There is no folder “My kitchen” yet", page, StringComparison.Ordinal);
        Assert.Contains(named, page, StringComparison.Ordinal);
        Assert.Contains("Look round with the invented class", page, StringComparison.Ordinal);
        Assert.False(Directory.Exists(named));

        await Sent([], "begin-named");
        Assert.Equal(named, folders.Current!.Root);
        Assert.True(File.Exists(Path.Combine(named, "class.md")));
        // It is there now, and is not begun again.
        Assert.DoesNotContain("There is no folder", await Sent(null, "folders"), StringComparison.Ordinal);
        Directory.Delete(place, recursive: true);

        async Task<string> Sent(Dictionary<string, string>? fields, string to)
        {
            using var request = new HttpRequestMessage(fields is null ? HttpMethod.Get : HttpMethod.Post, desk.Address + to);
            request.Headers.Add("Cookie", $"{Gate.Cookie}={desk.Keys.Session}");
            if (fields is not null)
            {
                request.Headers.Add("Origin", $"http://{desk.Authority}");
                request.Content = new FormUrlEncodedContent(new Dictionary<string, string>(fields) { ["token"] = desk.Keys.FormToken });
            }
            using var answer = await client.SendAsync(request);
            return System.Net.WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        }
    }
}
