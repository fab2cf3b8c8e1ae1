using System.Text.Encodings.Web;
using System.Text.Unicode;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace ClassKit.Pages.Rendering;

/// <summary>Renders one component to HTML. Safe in parallel: every call has a renderer of its own.</summary>
public static class PageRenderer
{
    /// <summary>Without this encoder every accented letter of a name would become a numeric entity.</summary>
    private static readonly ServiceProvider Services = new ServiceCollection()
        .AddSingleton(HtmlEncoder.Create(UnicodeRanges.All))
        .AddSingleton<IComponentActivator>(new PlainActivator())
        .BuildServiceProvider();

    /// <summary>Renders a component with its parameters by name.</summary>
    public static string Render<TComponent>(params IEnumerable<(string Name, object? Value)> parameters)
        where TComponent : IComponent
    {
        ArgumentNullException.ThrowIfNull(parameters);
        var view = ParameterView.FromDictionary(parameters.ToDictionary(parameter => parameter.Name, parameter => parameter.Value));
        using var renderer = new HtmlRenderer(Services, NullLoggerFactory.Instance);
        // No component of ours waits for anything, so the task is complete when it comes back.
        return renderer
            .Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<TComponent>(view)).ToHtmlString())
            .GetAwaiter()
            .GetResult();
    }
}
