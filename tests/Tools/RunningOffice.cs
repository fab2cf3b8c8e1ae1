using System.Diagnostics;

namespace ClassKit.Tests;

/// <summary>
/// An office suite that stays open for a whole test run: starting it takes four seconds of processor time, and a conversion a fifth of one.
/// </summary>
/// <remarks>
/// It is spoken to by a few lines of Python through its own interface (Debian's python3-uno), one conversion after the other.
/// </remarks>
internal sealed class RunningOffice
{
    private const string Script = """
        import subprocess, sys, time, uno
        from com.sun.star.beans import PropertyValue
        from com.sun.star.connection import NoConnectException

        program, profile, pipe = sys.argv[1:]
        office = subprocess.Popen(
            [program, "-env:UserInstallation=file://" + profile, "--headless", "--norestore", "--nologo", "--nodefault", f"--accept=pipe,name={pipe};urp"],
            stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        here = uno.getComponentContext()
        resolver = here.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", here)
        while True:
            try:
                there = resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
                break
            except NoConnectException:
                if office.poll() is not None: sys.exit("The office suite ended before it was asked for anything.")
                time.sleep(0.1)
        desktop = there.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", there)
        for line in sys.stdin:
            source, target, name = line.rstrip("\n").split("\t")
            try:
                document = desktop.loadComponentFromURL(uno.systemPathToFileUrl(source), "_blank", 0, (PropertyValue("Hidden", 0, True, 0),))
                document.storeToURL(uno.systemPathToFileUrl(target), (PropertyValue("FilterName", 0, name, 0),))
                document.close(True)
                print("done", flush=True)
            except Exception as failure:
                print(f"{type(failure).__name__} {failure}".replace("\n", " "), flush=True)
        try:
            desktop.terminate()
        except Exception:
            pass
        try:
            office.wait(60)
        except subprocess.TimeoutExpired:
            office.kill()
        """;

    private static readonly Lazy<RunningOffice?> Shared = new(() =>
        Tool.PythonWithUno.Find() is { } python ? new(python, Tool.LibreOffice.Require()) : null
    );

    private readonly Lock _oneAtATime = new();
    private readonly Process _talking;

    private RunningOffice(string python, string program)
    {
        var profile = Directory.CreateTempSubdirectory("classkit-profile-");
        var start = new ProcessStartInfo(python, ["-c", Script, program, profile.FullName, profile.Name])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        _talking = Process.Start(start)!;
        AppDomain.CurrentDomain.ProcessExit += (_, _) =>
        {
            _talking.StandardInput.Close();
            _talking.WaitForExit();
            // What it still writes as it ends is no failure of the tests that are over.
            try
            {
                profile.Delete(recursive: true);
            }
            catch (IOException) { }
        };
    }

    /// <summary>The one of this test run; null where it cannot be spoken to.</summary>
    public static RunningOffice? Current => Shared.Value;

    /// <summary>Opens, recalculates and saves a file as another.</summary>
    /// <param name="source">The file.</param>
    /// <param name="target">The new file.</param>
    /// <param name="filter">The suite's own name of the format.</param>
    public void Save(string source, string target, string filter)
    {
        lock (_oneAtATime)
        {
            _talking.StandardInput.WriteLine($"{source}\t{target}\t{filter}");
            _talking.StandardInput.Flush();
            Assert.Equal("done", _talking.StandardOutput.ReadLine());
        }
    }
}
