using ClassKit.Content.Diagnostics;
using ClassKit.Records.Classes;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>Gives a class on record another name: what was dealt, graded and given out under the earlier one stays its own.</summary>
public static class RenameClass
{
    /// <summary>What the change is called.</summary>
    public const string Kind = "rename";

    /// <summary>Renames it.</summary>
    /// <returns>What became of it, or why it cannot be called so.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<RenamedClass> Run(RenameClassRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.Recording, 1).Next();
        return RecordTroubles.Told(() => request.Record.Write(request.Author.Of(Kind, $"{request.Before} → {request.Name}"), session =>
            {
                var known = ClassRegister.Find(session, request.Before);
                if (known is not null && ClassRegister.Rename(session, known, request.Name) is { } renamed)
                    return new Reading<RenamedClass>(new(renamed.Name, true), []);
                session.Abandon();
                return known is null
                    ? new(new(request.Name, false), [])
                    : new(
                        null,
                        [
                            new(
                                request.Name,
                                null,
                                $"On record another class is called `{request.Name}`, or was",
                                "Give this class another name: under that one, what is on record of the two would be mixed."
                            ),
                        ]
                    );
            }));
    }
}
