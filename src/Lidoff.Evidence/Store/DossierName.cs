namespace Lidoff.Evidence.Store;

/// <summary>Short names of dossiers: typed on the command line, shown in addresses, and part of no path.</summary>
public static class DossierName
{
    /// <summary>Longest short name, in letters.</summary>
    public const int Longest = 64;

    /// <summary>True for 1 to 64 of a-z, 0-9, <c>-</c> and <c>_</c>, the first a letter or digit.</summary>
    public static bool Fits(string? name) =>
        name is { Length: > 0 and <= Longest }
        && name.All(c => c is >= 'a' and <= 'z' or >= '0' and <= '9' or '-' or '_')
        && name[0] is not ('-' or '_');
}
