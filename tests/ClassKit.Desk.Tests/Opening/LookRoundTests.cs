using ClassKit.Desk.Folders;
using ClassKit.Desk.Opening;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Opening;

/// <summary>What a look round borrowed goes away: with its desk, and after one that was ended too hard, with the next.</summary>
public sealed class LookRoundTests
{
    [Fact]
    public async Task It_goes_away_with_the_desk_that_is_asked_to_end()
    {
        var folders = new FolderHolder();
        var folder = LookRound.Make();
        Assert.Null(folders.Open(folder));
        await using (await OpenDesk.StartAsync(folders, new(), bug => Assert.Fail(bug.ToString()), () => RunningDesk.Now))
            Assert.True(Directory.Exists(folder.Root));
        Assert.False(Directory.Exists(folder.Root));
    }

    [Fact]
    public void What_was_left_behind_is_taken_away_and_what_is_in_use_is_not()
    {
        var (left, used) = (LookRound.Make().Root, LookRound.Make());
        using (var killed = new FolderHolder())
            Assert.Null(killed.Open(new(left)));
        using var holder = new FolderHolder();
        Assert.Null(holder.Open(used));

        Directory.Delete(LookRound.Make().Root, recursive: true);

        Assert.False(Directory.Exists(left));
        Assert.True(Directory.Exists(used.Root));
    }
}
