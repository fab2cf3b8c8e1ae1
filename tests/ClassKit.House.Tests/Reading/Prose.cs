using System.Text.RegularExpressions;
using Mono.Cecil;
using Mono.Cecil.Cil;

namespace ClassKit.House.Tests.Reading;

/// <summary>Sentences that code puts together, and whole ones that it holds.</summary>
internal static partial class Prose
{
    /// <summary>
    /// Every piece of prose of a project, with the folder it stands in. What is thrown is for programmers and does not count.
    /// </summary>
    public static IReadOnlyList<(string Folder, string Text)> In(string project)
    {
        using var assembly = AssemblyDefinition.ReadAssembly(
            Path.Combine(AppContext.BaseDirectory, project + ".dll"),
            new ReaderParameters { ReadSymbols = true }
        );
        var folders = CompiledHouse.Types.ToDictionary(type => type.Name, type => type.Folder, StringComparer.Ordinal);
        return
        [
            .. from type in assembly.MainModule.GetTypes()
            from method in type.Methods
            where method.HasBody
            from instruction in method.Body.Instructions
            where
                instruction.OpCode == OpCodes.Ldstr
                && instruction.Operand is string text
                && (IsPutTogether(instruction) ? HasWords(text) : IsSentence(text))
                && !IsThrown(instruction)
            select (folders.GetValueOrDefault(CompiledHouse.Outermost(type).FullName, project), (string)instruction.Operand),
        ];
    }

    /// <summary>True of a text with two words in a row.</summary>
    public static bool HasWords(string text) => TwoWords().IsMatch(text) && !text.Contains('<', StringComparison.Ordinal);

    /// <summary>True of a text that says something by itself.</summary>
    public static bool IsSentence(string text) => Sentence().IsMatch(text) && HasWords(text);

    /// <summary>True of a piece of an interpolation.</summary>
    private static bool IsPutTogether(Instruction instruction) => instruction.Next?.Operand is MethodReference { Name: "AppendLiteral" };

    /// <summary>True if nothing but an exception comes of it.</summary>
    private static bool IsThrown(Instruction instruction)
    {
        for (var at = instruction.Next; at is not null; at = at.Next)
        {
            if (
                at.OpCode == OpCodes.Throw
                || (
                    at.OpCode == OpCodes.Newobj
                    && ((MethodReference)at.Operand).DeclaringType.Name.EndsWith("Exception", StringComparison.Ordinal)
                )
            )
                return true;
            if (at.OpCode.FlowControl is FlowControl.Return or FlowControl.Branch or FlowControl.Cond_Branch)
                return false;
        }
        return false;
    }

    [GeneratedRegex(@"\p{Ll}{2,} \p{L}?\p{Ll}+", RegexOptions.CultureInvariant)]
    private static partial Regex TwoWords();

    [GeneratedRegex(@"^\p{Lu}.*( \p{L}+){3,}.*[.?!]$", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex Sentence();
}
