using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Tables;

/// <summary>Reads <c>1=VDD:power_in;2=GND:power_in</c>. A name may hold a colon; the type word is what follows the last one.</summary>
public static class PinoutText
{
    /// <summary>The pins in the order written, or null when some piece is no pin; then <paramref name="odd"/> is that piece.</summary>
    public static IReadOnlyList<Pin>? Read(string text, out string odd)
    {
        odd = "";
        if (text.Length == 0) return [];
        var pins = new List<Pin>();
        foreach (var piece in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var equals = piece.IndexOf('=', StringComparison.Ordinal);
            if (equals <= 0)
            {
                odd = piece;
                return null;
            }

            var colon = piece.LastIndexOf(':');
            pins.Add(colon > equals
                ? new Pin(piece[..equals].Trim(), piece[(equals + 1)..colon].Trim(), piece[(colon + 1)..].Trim())
                : new Pin(piece[..equals].Trim(), piece[(equals + 1)..].Trim(), ""));
        }

        return pins;
    }

    /// <summary>Writes what <see cref="Read"/> reads.</summary>
    public static string Write(IReadOnlyList<Pin> pins) =>
        string.Join(';', pins.Select(p => p.Type.Length > 0 ? $"{p.Number}={p.Name}:{p.Type}" : $"{p.Number}={p.Name}"));
}
