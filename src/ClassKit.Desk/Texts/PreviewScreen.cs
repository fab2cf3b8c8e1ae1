using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Pages.Layout;
using ClassKit.Pages.Rendering;
using ClassKit.UseCases.Packs;

namespace ClassKit.Desk.Texts;

/// <summary>A page of a lesson as it would be with what stands in the field: shown beside it, and written nowhere.</summary>
internal static class PreviewScreen
{
    public static void AddTo(DeskRoutes routes) =>
        routes.TakeInside("texts/{file}/preview", visit => TextScreen.With(visit, (entry, text) => Show(visit, entry, text)));

    private static Task Show(Visit visit, TextEntry entry, OwnText text)
    {
        var known = visit.Folder.Class(visit.Typed("class"));
        if (entry.Lesson is not { } lesson || known is null)
            return visit.Nothing();
        var library = new Library(new ChangedTree(PathTree.Instance.Full(entry.Path), text.With(visit.Text("text"))));
        var request = BuildPack.Read(library.At(lesson), library.At(known.File));
        var pack = request.Succeeded ? BuildPack.Run(request.Model, new(null, visit.Context.RequestAborted)) : new(null, request.Problems);
        return pack.Succeeded ? MadeFiles.Answer(visit, PackFiles.Of(pack.Model), visit.Typed("page")) : Wrong(visit, pack.Problems);
    }

    private static Task Wrong(Visit visit, IReadOnlyList<Diagnostic> problems) =>
        visit.ShowSheet(
            PageRenderer.Render<NoPreviewPage>([(nameof(NoPreviewPage.Problems), problems), (nameof(NoPreviewPage.Style), Stylesheet.Text)])
        );
}
