using System.Diagnostics;

namespace ClassKit.UseCases.Intake;

/// <summary>What to say of a returned item that something went wrong with, to the student and to those who mend programs.</summary>
/// <remarks>What an exception says itself names places on the instructor's machine, and is never passed on.</remarks>
internal static class ItemFailure
{
    private const string Instructor = "This is nothing that the student did; the instructor can put it right or ask for the file once more, to hand it in again.";

    /// <summary>What happened and what to do, in words that can be forwarded to the student.</summary>
    public static string Words(Exception failure) => failure switch
    {
        UnauthorizedAccessException => $"It lies where it may not be opened: the right to read it is missing. {Instructor}",
        FileNotFoundException or DirectoryNotFoundException => $"It was there when grading began and was gone when it was to be read, or its name cannot be used on this system. {Instructor}",
        PathTooLongException => $"Its name, or the names of the folders around it, are too long to open it. {Instructor}",
        IOException => $"It could not be read from the disk or network that it lies on. {Instructor}",
        _ => "It could not be judged because of an error in the program that grades. This is nothing that the student did: the instructor has been told and looks at it by hand. There is no need to hand it in again.",
    };

    /// <summary>Which exception came from where, if the mistake is ours; null for what the system refused.</summary>
    public static string? Fault(Exception failure) =>
        failure is IOException or UnauthorizedAccessException ? null : $"{failure.GetType().Name} in {Where(failure)}";

    private static string Where(Exception failure)
    {
        var methods = new StackTrace(failure, fNeedFileInfo: false).GetFrames().Select(frame => frame.GetMethod()).OfType<System.Reflection.MethodBase>();
        var own = methods.FirstOrDefault(method => method.DeclaringType?.Namespace?.StartsWith(nameof(ClassKit), StringComparison.Ordinal) == true);
        return own is null ? "an unknown place" : $"{own.DeclaringType!.Name}.{own.Name}";
    }
}
