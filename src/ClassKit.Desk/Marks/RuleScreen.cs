using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Texts;
using ClassKit.Terms.Rules;

namespace ClassKit.Desk.Marks;

/// <summary>The rule by which a term's grades are made, in a form: written back into the same lines and cells of the same file.</summary>
internal static class RuleScreen
{
    private const string Page = "marks/{class}/{term}/rule";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit => WithRule(visit, (known, term, text, rule) => Show(visit, known, term, text, rule, [])));
        routes.TakeInside(Page, visit => WithRule(visit, (known, term, text, rule) => Keep(visit, known, term, text, rule)));
    }

    /// <summary>Answers where the rule lies in the folder and can be read; where it cannot, its text is what is to be changed.</summary>
    private static Task WithRule(Visit visit, Func<ClassEntry, TermEntry, OwnText, GradeRule, Task> answer) =>
        MarksScreen.InTerm(visit, (known, term) => visit.Folder.TextAt(term.RuleFile) is not { } entry
            || OwnText.Read(entry.Path) is not { } text
                ? visit.Nothing()
            : GradeRuleReader.Read(Library.OfPaths().At(entry.Path)).Model is { } rule ? answer(known, term, text, rule)
            : visit.GoTo($"texts/{entry.Key}"));

    private static Task Keep(Visit visit, ClassEntry known, TermEntry term, OwnText text, GradeRule rule)
    {
        if (visit.Typed("stamp") != text.Stamp)
        {
            var shown = RuleFields.Shown(rule);
            var typed = shown
                .Where(field => visit.Sent(field.Key) is { } sent && sent != field.Value)
                .Select(field => $"{visit.Sent(field.Key)} where {field.Value} stands now");
            return Show(visit, known, term, text, rule, [text.Meanwhile(typed)], isTyped: false);
        }
        if (RuleFields.With(text.Text, rule, visit.Sent) is not { } whole)
            return Show(
                visit,
                known,
                term,
                text,
                rule,
                [new(text.Path, null, "The file has a table that this cannot be written into", "Change the file’s text.")]
            );
        var content = text.With(whole);
        var changed = new Library(new ChangedTree(PathTree.Instance.Full(text.Path), content));
        var read = GradeRuleReader.Read(changed.At(text.Path));
        IReadOnlyList<Diagnostic> problems = read.Succeeded ? [.. Holding.Broken(visit.Folder, changed)] : read.Problems;
        return problems.Count > 0 ? Show(visit, known, term, text, rule, problems)
            : text.Write(visit.Typed("stamp"), content) is { } refused ? Show(visit, known, term, text, rule, [refused])
            : visit.GoTo($"marks/{known.Key}/{term.Key}/rule?kept=yes");
    }

    private static Task Show(
        Visit visit,
        ClassEntry known,
        TermEntry term,
        OwnText text,
        GradeRule rule,
        IReadOnlyList<Diagnostic> problems,
        bool isTyped = true
    ) =>
        visit.Show<RulePage>(
            (nameof(RulePage.Class), known),
            (nameof(RulePage.Term), term),
            (nameof(RulePage.Rule), rule),
            (nameof(RulePage.Stamp), text.Stamp),
            (nameof(RulePage.Problems), problems),
            (nameof(RulePage.Again), isTyped ? (Func<string, string?>)visit.Sent : _ => null),
            (
                nameof(RulePage.Others),
                visit
                    .Folder.Classes()
                    .SelectMany(one => TermEntry.Of(visit.Folder, one))
                    .Count(other => other.File != term.File && other.RuleFile == term.RuleFile)
            ),
            (nameof(RulePage.Text), visit.Folder.TextAt(text.Path)),
            (nameof(RulePage.IsKept), visit.Typed("kept").Length > 0)
        );
}
