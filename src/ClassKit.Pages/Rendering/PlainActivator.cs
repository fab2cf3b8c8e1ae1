using Microsoft.AspNetCore.Components;

namespace ClassKit.Pages.Rendering;

/// <summary>
/// Makes components by their constructors. None of ours asks for services, and the framework's own activator writes and compiles an
/// expression for each kind of component, which costs a command more than making all of them.
/// </summary>
internal sealed class PlainActivator : IComponentActivator
{
    public IComponent CreateInstance(Type componentType) => (IComponent)Activator.CreateInstance(componentType)!;
}
