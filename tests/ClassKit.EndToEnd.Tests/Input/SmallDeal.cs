using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Input;

/// <summary>The demo lesson dealt to three students, once for all tests that need a good deal beside something bad.</summary>
public sealed class SmallDeal : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public SmallDeal()
    {
        Folder = _folder.Of("dealt");
        File.WriteAllText(_folder.Of("roster.csv"), "id,name\nada-berg,Ada Berg\nben-okoye,Ben Okoye\ncleo-marin,Cleo Marin\n");
        ClassKitRun.Of("deal", Checkout.Demo.Lesson, "--roster", _folder.Of("roster.csv"), "--out", Folder).Done();
    }

    public string Folder { get; }

    public void Dispose() => _folder.Dispose();
}
