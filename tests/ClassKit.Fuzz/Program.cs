using System.Diagnostics;
using System.Globalization;
using ClassKit.Fuzz;

// dotnet run -c Release --project tests/ClassKit.Fuzz -- parser|evaluator|reader [seconds] [seed]
if (args.Length == 0 || args[0] is not ("parser" or "evaluator" or "reader"))
{
    await Console.Error.WriteLineAsync("usage: ClassKit.Fuzz parser|evaluator|reader [seconds] [seed]");
    return 2;
}

var seconds = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 60;
var seed = args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 1;
var seeds = SeedFormulas.All();
ITarget target = args[0] switch
{
    "parser" => new ParserTarget(),
    "evaluator" => new EvaluatorTarget(),
    _ => new ReaderTarget(),
};

// What was tried last survives even a stack that overflows.
var lastTried = Path.Combine(Path.GetTempPath(), $"classkit-fuzz-{args[0]}.txt");
await using var last = new FileStream(lastTried, FileMode.Create, FileAccess.Write, FileShare.Read);
var findings = new HashSet<string>(StringComparer.Ordinal);
var (runs, slowest) = (0L, TimeSpan.Zero);
var clock = Stopwatch.StartNew();
for (; clock.Elapsed.TotalSeconds < seconds; runs++)
{
    // Each run has a seed of its own, so that one finding can be made again alone.
    var mutator = new Mutator(seeds, unchecked(seed * 1_000_003 + (int)runs));
    var input = target.Mutate(mutator);
    last.SetLength(0);
    last.Write(System.Text.Encoding.UTF8.GetBytes(input));
    last.Flush();
    var began = Stopwatch.GetTimestamp();
    var problem = Try(() => target.Run(input));
    var took = Stopwatch.GetElapsedTime(began);
    if (took > slowest)
    {
        slowest = took;
        if (took.TotalSeconds > 1)
            Console.WriteLine($"slow, {took.TotalSeconds:F1} s: {Shown(input)}");
    }

    if (problem is not null && findings.Add(problem.Split('\n')[0]))
        Console.WriteLine($"run {runs}: {problem}\n  of: {Shown(input)}");
}

Console.WriteLine(
    $"{args[0]}: {runs} runs in {clock.Elapsed.TotalSeconds:F0} s, {findings.Count} findings, {target.Summary}, slowest {slowest.TotalMilliseconds:F0} ms"
);
return findings.Count == 0 ? 0 : 1;

static string? Try(Func<string?> run)
{
    try
    {
        return run();
    }
    catch (Exception thrown)
    {
        return $"{thrown.GetType().Name}: {thrown.Message} at {thrown.StackTrace?.Split('\n').FirstOrDefault()?.Trim()}\n{thrown.StackTrace}";
    }
}

static string Shown(string input) => input.Length <= 400 ? input : input[..400] + $"... ({input.Length} characters)";
