using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Bench.Rooms.Open.Typed;

/// <summary>
/// How it behaved, typed on one line: <c>idle: nothing lit, 6.1 µA ± 0.4, lasts 8 h</c>. Before the colon stands the state's name, which
/// the energy model takes; pieces behind commas may be a current (negative while charging), <c>lights …</c>, <c>press …</c> or
/// <c>buttons …</c>, <c>lasts …</c>; all else says what it does.
/// </summary>
public sealed record StateTyped(string Name, string Says, string Lights, string Buttons, double? LastsS, double? CurrentUa, double? UUa)
{
    /// <summary>Reads the line; all faults at once.</summary>
    public static Outcome<StateTyped> Read(string? text)
    {
        var words = (text ?? "").Trim();
        var at = words.IndexOf(':', StringComparison.Ordinal);
        var pieces = Pieces.Of(at < 0 ? words : words[(at + 1)..]).ToList();
        var name = at < 0 ? pieces.FirstOrDefault() ?? "" : words[..at].Trim();
        if (at < 0 && pieces.Count > 0) pieces.RemoveAt(0);
        if (name.Length == 0) return OpenSentences.NoState;
        var made = new StateTyped(name, "", "", "", null, null, null);
        var says = new List<string>();
        var faults = new List<Fault>();
        foreach (var piece in pieces)
        {
            if (Pieces.After(piece, "lights", "light") is { } lights) made = made with { Lights = lights };
            else if (Pieces.After(piece, "buttons", "button", "press") is { } buttons) made = made with { Buttons = buttons };
            else if (Pieces.After(piece, "lasts") is { } lasts)
            {
                var span = TypedQuantity.Read(lasts, Units.Second, "lasts");
                if (span.TryValue(out var time)) made = made with { LastsS = time.Quantity.Si };
                else faults.AddRange(span.Faults);
            }
            else if (Pieces.Measured(piece, Units.Microampere, "current") is { } current)
            {
                var ua = current.Then(found => TypedValue.Of(found, Units.Microampere, OpenSentences.CurrentIsNoRange));
                if (ua.TryValue(out var drawn)) made = made with { CurrentUa = drawn.Value, UUa = drawn.U };
                else faults.AddRange(ua.Faults);
            }
            else
            {
                says.Add(piece);
            }
        }

        return faults.Count > 0 ? Outcome<StateTyped>.Failed(faults) : made with { Says = string.Join(", ", says) };
    }

    /// <summary>The line to store.</summary>
    public Line Line(string specimen) => Working.Line.Of("state").Set("specimen", specimen).Set("name", Name).Set("says", Says).Set("lights", Lights)
        .Set("buttons", Buttons).Set("lasts_s", LastsS).Set("current_ua", CurrentUa).Set("u_ua", UUa);
}
