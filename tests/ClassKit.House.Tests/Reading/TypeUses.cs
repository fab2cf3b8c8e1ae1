using Mono.Cecil;
using Mono.Cecil.Cil;

namespace ClassKit.House.Tests.Reading;

/// <summary>Every type that a type names.</summary>
internal static class TypeUses
{
    public static IEnumerable<string> Of(TypeDefinition type) =>
        References(type)
            .OfType<TypeReference>()
            .SelectMany(Parts)
            .Select(reference => CompiledHouse.Outermost(reference).FullName)
            .Distinct();

    private static IEnumerable<TypeReference?> References(TypeDefinition type) =>
        [
            type.BaseType,
            .. type.Interfaces.Select(each => each.InterfaceType),
            .. type.CustomAttributes.SelectMany(Attribute),
            .. type.GenericParameters.SelectMany(parameter => parameter.Constraints).Select(constraint => constraint.ConstraintType),
            .. type.Fields.Select(field => field.FieldType),
            .. type.Fields.SelectMany(field => field.CustomAttributes).SelectMany(Attribute),
            .. type.Properties.SelectMany(property => property.CustomAttributes).SelectMany(Attribute),
            .. type.Methods.SelectMany(Signature),
            .. type.Methods.Where(method => method.HasBody).SelectMany(method => Body(method.Body)),
        ];

    private static IEnumerable<TypeReference?> Attribute(CustomAttribute attribute) =>
        [attribute.AttributeType, .. attribute.ConstructorArguments.Select(argument => argument.Value as TypeReference)];

    private static IEnumerable<TypeReference?> Signature(MethodDefinition method) =>
        [
            method.ReturnType,
            .. method.Parameters.Select(parameter => parameter.ParameterType),
            .. method.GenericParameters.SelectMany(parameter => parameter.Constraints).Select(constraint => constraint.ConstraintType),
            .. method.CustomAttributes.SelectMany(Attribute),
        ];

    private static IEnumerable<TypeReference?> Body(MethodBody body) =>
        [
            .. body.Variables.Select(variable => variable.VariableType),
            .. body.ExceptionHandlers.Select(handler => handler.CatchType),
            .. body.Instructions.SelectMany(Operand),
        ];

    private static IEnumerable<TypeReference?> Operand(Instruction instruction) =>
        instruction.Operand switch
        {
            TypeReference type => [type],
            FieldReference field => [field.DeclaringType, field.FieldType],
            GenericInstanceMethod method => [method.DeclaringType, method.ReturnType, .. method.GenericArguments],
            MethodReference method =>
            [
                method.DeclaringType,
                method.ReturnType,
                .. method.Parameters.Select(parameter => parameter.ParameterType),
            ],
            _ => [],
        };

    /// <summary>A list of masses names the list and the mass.</summary>
    private static IEnumerable<TypeReference> Parts(TypeReference type) =>
        type switch
        {
            GenericInstanceType generic => [generic.ElementType, .. generic.GenericArguments.SelectMany(Parts)],
            GenericParameter => [],
            TypeSpecification specification => Parts(specification.ElementType),
            _ => [type],
        };
}
