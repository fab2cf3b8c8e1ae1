using Markdig.Extensions.TaskLists;
using Markdig.Renderers;
using Markdig.Renderers.Html;

namespace ClassKit.Pages.Prose;

/// <summary>Task-list items as boxes to tick with a pen.</summary>
/// <remarks>Markdig's own renderer writes checkboxes without a label, a critical accessibility fault.</remarks>
internal sealed class TaskBoxRenderer : HtmlObjectRenderer<TaskList>
{
    /// <inheritdoc/>
    protected override void Write(HtmlRenderer renderer, TaskList obj)
    {
        renderer.Write(
            obj.Checked ? "<span class=\"box box-ticked\" aria-hidden=\"true\"></span>" : "<span class=\"box\" aria-hidden=\"true\"></span>"
        );
        if (obj.Checked)
            renderer.Write("<span class=\"only-spoken\">Done: </span>");
    }
}
