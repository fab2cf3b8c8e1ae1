using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.UseCases.Dealing;

/// <summary>A folder that dealing made.</summary>
public static class DealtFolder
{
    /// <summary>What was dealt, from the folder's dealt.json.</summary>
    public static Reading<DealtClass> Read(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var path = Path.Combine(folder, DealtJson.FileName);
        if (OutputFolder.Settle(folder) is { } unsettled)
            return new(null, [unsettled]);
        return File.Exists(path)
            ? DealtJson.ReadFile(path)
            : new(
                null,
                [
                    new(
                        path,
                        null,
                        "There is no such file",
                        "Name the folder that dealing made; it holds dealt.json, answer-key.html and workbooks."
                    )
                    {
                        Remedy = Remedy.NameDealtFolder,
                    },
                ]
            );
    }
}
