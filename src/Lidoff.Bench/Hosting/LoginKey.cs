using System.Security.Cryptography;
using System.Text;

namespace Lidoff.Bench.Hosting;

/// <summary>
/// The one key of this start and the one session it opens. Both live in memory only: another start knows neither.
/// </summary>
internal sealed class LoginKey
{
    private readonly byte[] session;
    private int used;

    public LoginKey(Action<Span<byte>> unguessable)
    {
        Key = Token(unguessable);
        Session = Token(unguessable);
        session = Encoding.ASCII.GetBytes(Session);
    }

    /// <summary>Stands in the address that is printed.</summary>
    public string Key { get; }

    /// <summary>Stands in the cookie.</summary>
    public string Session { get; }

    /// <summary>True once, for the right key.</summary>
    public bool Use(string? key) => Same(Encoding.ASCII.GetBytes(Key), key) && Interlocked.Exchange(ref used, 1) == 0;

    /// <summary>Whether a cookie is this session's.</summary>
    public bool Holds(string? cookie) => Same(session, cookie);

    // In time that tells nothing of how much was right.
    private static bool Same(byte[] right, string? given) =>
        given is not null && CryptographicOperations.FixedTimeEquals(right, Encoding.UTF8.GetBytes(given));

    private static string Token(Action<Span<byte>> unguessable)
    {
        Span<byte> bytes = stackalloc byte[32];
        unguessable(bytes);
        return Convert.ToHexStringLower(bytes);
    }
}
