using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.WebUtilities;

namespace ClassKit.Desk.Safety;

/// <summary>The secrets of one desk, drawn when it opens and gone when it closes: nobody else on the machine can come by them.</summary>
/// <remarks>
/// Every one has 128 bits or more. <see cref="Room"/> stands in front of every path: a cookie is sent to all ports of a machine, but only
/// below its path, so that another user's server on this machine is never sent ours.
/// </remarks>
internal sealed class DeskKeys
{
    private readonly Lock _using = new();
    private string? _key = Draw(32);

    /// <summary>The first step of every path.</summary>
    public string Room { get; } = Draw(16);

    /// <summary>The value of the session's cookie.</summary>
    public string Session { get; } = Draw(32);

    /// <summary>What every form brings along, so that no other page can send one (OWASP: synchronizer token).</summary>
    public string FormToken { get; } = Draw(32);

    /// <summary>The key of the address that is handed to the browser; null once it was used.</summary>
    public string? Key
    {
        get
        {
            lock (_using)
                return _key;
        }
    }

    /// <summary>Takes the key, which works for one visit only.</summary>
    public bool Take(string? offered)
    {
        lock (_using)
        {
            if (_key is null || !Same(_key, offered))
                return false;
            _key = null;
            return true;
        }
    }

    /// <summary>Compares in a time that says nothing of where two texts part.</summary>
    public static bool Same(string secret, string? offered) =>
        offered is not null && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(secret), Encoding.UTF8.GetBytes(offered));

    private static string Draw(int bytes) => WebEncoders.Base64UrlEncode(RandomNumberGenerator.GetBytes(bytes));
}
