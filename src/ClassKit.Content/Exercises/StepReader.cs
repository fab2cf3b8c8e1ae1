using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Exercises.Authoring;
using Markdig.Syntax;

namespace ClassKit.Content.Exercises;

/// <summary>Reads a step: a few words, then a list with key and unit. It may use givens and the steps before it.</summary>
internal static class StepReader
{
    public static WorkingStep? Read(string id, Section section, NameScope names, ProblemList problems)
    {
        var before = problems.Count;
        var what = section with { Blocks = [.. section.Blocks.TakeWhile(block => block is not ListBlock)] };
        if (what.Blocks.Count == 0)
            problems.Add(section.Line, $"The step `{id}` says nothing", "Write below its heading what is worked out, in a few words.");

        var list = section with { Blocks = [.. section.Blocks.Skip(what.Blocks.Count)] };
        var entries = new Entries(section, Lists.Entries(list, problems), problems);
        var key = entries.Required("Key") is { } text ? FormulaText.Read(text, "The key", names, problems) : null;
        var unit = Unit.Of(entries.Required("Unit")?.Text ?? "");
        entries.Finish();

        // Usable from here on, even if its key is broken: one complaint is enough.
        if (key is null)
            names.Add(new(id, section.Line), "step", problems);
        else
            names.AddStep(new(id, section.Line), key, problems);
        return problems.Count == before ? new(id, what.Prose, key!, unit) : null;
    }

    /// <summary>Notes every step that leads nowhere.</summary>
    public static void FindIdle(
        IReadOnlyList<(string Name, Section Section)> sections,
        IReadOnlyList<WorkingStep> steps,
        IReadOnlyList<Part> parts,
        ProblemList problems
    )
    {
        var used = steps
            .SelectMany(step => step.Key.Names)
            .Concat(parts.SelectMany(part => (part.Written ?? part.Key).Names))
            .ToHashSet(StringComparer.Ordinal);
        foreach (var (name, section) in sections.Where(section => !used.Contains(section.Name)))
            problems.Add(section.Line, $"No key uses the step `{name}`", "Use it in a key, or take it out.");
    }
}
