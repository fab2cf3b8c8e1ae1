using System.Text.RegularExpressions;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Opening;
using ClassKit.Desk.Safety;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Desk;

/// <summary>
/// A disk that is full while the desk is open on it: what does not fit is said, nothing is half-written or left behind, and once there is
/// room the same goes through.
/// </summary>
public sealed partial class FullDeskTests
{
    [Fact]
    public async Task What_no_longer_fits_is_said_and_what_was_there_stays()
    {
        using var disk = SmallDisk.OrSkip();
        var root = Path.Combine(disk.Path, "teaching");
        var made = LookRound.Make();
        FolderContent.Copy(made.Root, root);
        Directory.Delete(made.Root, recursive: true);
        List<Exception> ours = [];
        var folders = new FolderHolder();
        Assert.Null(folders.Open(new(root)));
        await using var desk = await OpenDesk.StartAsync(folders, new(), ours.Add, () => new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
        using var client = new HttpClient(new SocketsHttpHandler { UseCookies = false, AllowAutoRedirect = false });
        var stamp = Stamp().Match(await Sent(client, desk, "class/class", null)).Groups["stamp"].Value;
        var before = FolderContent.Digests(root, path => !path.EndsWith(FolderHolder.LockName, StringComparison.Ordinal));

        disk.Fill(0);
        Assert.Contains(
            "could not be written",
            await Sent(client, desk, "class/class", [("stamp", stamp), ("title", new string('x', 100)), ("kitchen", new string('y', 400))]),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "could not be begun",
            await Sent(client, desk, "classes/new", [("name", "Thursday bakers")]),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "could not be begun",
            await Sent(client, desk, "marks/class/new", [("title", "Spring"), ("written", "yes")]),
            StringComparison.Ordinal
        );
        Assert.Empty(ours);
        Assert.Equal(before, FolderContent.Digests(root, path => !path.EndsWith(FolderHolder.LockName, StringComparison.Ordinal)));

        disk.Empty();
        Assert.Equal("", await Sent(client, desk, "class/class", [("stamp", stamp), ("title", "Wednesday bakers")]));
        Assert.Equal("", await Sent(client, desk, "classes/new", [("name", "Thursday bakers")]));
        Assert.Equal("", await Sent(client, desk, "marks/class/new", [("title", "Spring"), ("written", "yes")]));
    }

    /// <summary>The page that answers; empty where the desk goes on to another.</summary>
    private static async Task<string> Sent(
        HttpClient client,
        OpenDesk desk,
        string path,
        IReadOnlyList<(string Name, string Value)>? fields
    )
    {
        using var request = new HttpRequestMessage(fields is null ? HttpMethod.Get : HttpMethod.Post, desk.Address + path);
        request.Headers.Add("Cookie", $"{Gate.Cookie}={desk.Keys.Session}");
        if (fields is not null)
        {
            request.Headers.Add("Origin", $"http://{desk.Authority}");
            request.Content = new FormUrlEncodedContent(
                fields.Prepend(("token", desk.Keys.FormToken)).Select(field => KeyValuePair.Create(field.Item1, field.Item2))
            );
        }
        using var answer = await client.SendAsync(request);
        return (int)answer.StatusCode == 303 ? "" : await answer.Content.ReadAsStringAsync();
    }

    [GeneratedRegex("name=\"stamp\" value=\"(?<stamp>[^\"]*)\"")]
    private static partial Regex Stamp();
}
