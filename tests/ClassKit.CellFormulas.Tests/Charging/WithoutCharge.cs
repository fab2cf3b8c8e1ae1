using System.Reflection;
using System.Runtime.Loader;
using ClassKit.CellFormulas.Formulas;
using Mono.Cecil;
using Mono.Cecil.Cil;

namespace ClassKit.CellFormulas.Tests.Charging;

/// <summary>
/// The library of cell formulas with the charges of one method taken out of its compiled code, as if whoever wrote the method had forgotten
/// to count its work.
/// </summary>
internal static class WithoutCharge
{
    private static readonly string Library = typeof(CellFormula).Assembly.Location;

    /// <summary>The methods of functions that count work of their own, each as type and method.</summary>
    public static IReadOnlyList<string> Sites()
    {
        using var module = ModuleDefinition.ReadModule(Library);
        return [.. Charges(module).Select(charge => charge.Site).Distinct().Order(StringComparer.Ordinal)];
    }

    /// <summary>Runs a test of this project's, by name, on the library without one method's charges.</summary>
    /// <returns>What the test failed with; null if it passed.</returns>
    public static Exception? Fails(string site, Type test, string method, ITestOutputHelper output, string argument)
    {
        var context = new AssemblyLoadContext(site, isCollectible: true);
        try
        {
            using var mutant = Mutant(site);
            var library = context.LoadFromStream(mutant);
            context.Resolving += (_, name) => name.Name == library.GetName().Name ? library : null;
            var copy = context.LoadFromAssemblyPath(test.Assembly.Location).GetType(test.FullName!, throwOnError: true)!;
            copy.GetMethod(method)!.Invoke(Activator.CreateInstance(copy, output), [argument]);
            return null;
        }
        catch (TargetInvocationException failure)
        {
            return failure.InnerException;
        }
        finally
        {
            context.Unload();
        }
    }

    private static MemoryStream Mutant(string site)
    {
        using var module = ModuleDefinition.ReadModule(Library);
        var found = Charges(module).Where(charge => charge.Site == site).ToList();
        Assert.NotEmpty(found);
        foreach (var (_, method, call) in found)
        {
            var meter = (MethodReference)call.Operand;
            var code = method.Body.GetILProcessor();
            // The call becomes the first pop where it stands, so that what jumps to it still does.
            for (var more = meter.Parameters.Count + (meter.HasThis ? 1 : 0); more > 1; more--)
                code.InsertAfter(call, Instruction.Create(OpCodes.Pop));
            (call.OpCode, call.Operand) = (OpCodes.Pop, null);
        }

        var mutant = new MemoryStream();
        module.Write(mutant);
        mutant.Position = 0;
        return mutant;
    }

    private static IEnumerable<(string Site, MethodDefinition Method, Instruction Call)> Charges(ModuleDefinition module) =>
        from type in module.GetTypes()
        from method in type.Methods
        where method.HasBody
        let outer = Outermost(type)
        where outer.Name is not ("Meter" or "Charges" or "Run")
        from instruction in method.Body.Instructions.ToList()
        where instruction.OpCode.FlowControl == FlowControl.Call && IsCharge((MethodReference)instruction.Operand)
        select ($"{outer.Name}.{Written(method.Name)}", method, instruction);

    private static bool IsCharge(MethodReference called) =>
        called.DeclaringType.Name is "Meter" or "Charges" or "Run"
        && (called.Name == "Spend" || called.Name.StartsWith("Take", StringComparison.Ordinal));

    private static TypeDefinition Outermost(TypeDefinition type) => type.DeclaringType is { } outer ? Outermost(outer) : type;

    /// <summary>The name as it stands in the source: of a method within a method, the outer one's.</summary>
    private static string Written(string name) => name.StartsWith('<') ? name[1..name.IndexOf('>')] : name;
}
