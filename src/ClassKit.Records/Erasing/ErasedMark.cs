using System.Security.Cryptography;
using System.Text;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Erasing;

/// <summary>
/// What stays of an erased student in the log of changes: enough to know the id again when somebody brings it back, and nothing that says
/// whose it was to whoever does not know the id.
/// </summary>
public static class ErasedMark
{
    private const char Between = '$';
    private const int SaltBytes = 16;

    /// <summary>The mark of an id, another one each time.</summary>
    public static string Of(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        var salt = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(SaltBytes));
        return $"{salt}{Between}{Digest(salt, id)}";
    }

    /// <summary>Those of some ids that were erased from a record under <paramref name="kind"/>.</summary>
    /// <param name="session">Reads.</param>
    /// <param name="kind">What the changes that erased are called.</param>
    /// <param name="ids">Students' ids.</param>
    public static IReadOnlySet<string> Among(RecordSession session, string kind, IEnumerable<string> ids)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(ids);
        var marks = session
            .Query("SELECT about FROM change WHERE what = $1 AND about <> ''", row => row.Text(0).Split(Between), kind)
            .Where(mark => mark.Length == 2)
            .ToList();
        return marks.Count == 0
            ? new HashSet<string>()
            : ids.Where(id => marks.Exists(mark => Digest(mark[0], id) == mark[1])).ToHashSet(StringComparer.Ordinal);
    }

    private static string Digest(string salt, string id) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(salt + id)));
}
