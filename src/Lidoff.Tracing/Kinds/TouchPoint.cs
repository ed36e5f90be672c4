namespace Lidoff.Tracing.Kinds;

/// <summary>A point a probe was put on, as typed: a pin of a spot (U3.13, J1.A4), or the name of a net, rail or pad (GND, 3V3, TP5).</summary>
/// <param name="Text">The point as typed, without blanks at the ends.</param>
public sealed record TouchPoint(string Text)
{
    /// <summary>The spot of a pin ("U3"); empty when the point is not a pin of a spot.</summary>
    public string Spot => Split() is { } at ? Text[..at] : "";

    /// <summary>The pin ("13"); empty when the point is not a pin of a spot.</summary>
    public string Pin => Split() is { } at ? Text[(at + 1)..] : "";

    // One to three letters, a number, a dot, then letters and digits. A rail named 3.3V begins with a digit and stays a name.
    private int? Split()
    {
        var at = Text.IndexOf('.', StringComparison.Ordinal);
        if (at < 2 || at == Text.Length - 1) return null;
        var letters = Text.AsSpan(0, at).IndexOfAnyInRange('0', '9');
        var fits = letters is >= 1 and <= 3 && Text[..letters].All(char.IsAsciiLetter) && Text[letters..at].All(char.IsAsciiDigit)
            && Text[(at + 1)..].All(char.IsAsciiLetterOrDigit);
        return fits ? at : null;
    }
}
