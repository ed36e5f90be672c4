using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Bench.Rooms.Open.Typed;

/// <summary>
/// A specimen as it is typed on one line: <c>A second-hand band, 23.4 g</c>. The first word is its short name; pieces behind commas
/// may be a mass, <c>from …</c>, <c>bought 2026-01-12</c>, <c>revision …</c>, <c>may be destroyed</c> or <c>keep whole</c>; all else says what it is.
/// </summary>
public sealed record SpecimenTyped(string Specimen, string Says, string From, string Bought, string Revision, bool? MayDestroy, double? MassG, double? UG)
{
    /// <summary>Reads the line; all faults at once.</summary>
    public static Outcome<SpecimenTyped> Read(string? text)
    {
        var words = (text ?? "").Trim();
        if (words.Length == 0) return OpenSentences.NoSpecimen;
        var at = words.IndexOfAny([' ', ',', ':']);
        var name = at < 0 ? words : words[..at];
        var made = new SpecimenTyped(name, "", "", "", "", null, null, null);
        var says = new List<string>();
        var faults = new List<Fault>();
        foreach (var piece in Pieces.Of(at < 0 ? "" : words[at..].TrimStart(' ', ',', ':')))
        {
            if (Pieces.After(piece, "from") is { } from) made = made with { From = from };
            else if (Pieces.After(piece, "bought") is { } day && day.Any(char.IsAsciiDigit)) made = made with { Bought = day };
            // "bought second-hand": where from, not when.
            else if (Pieces.After(piece, "bought") is not null) made = made with { From = piece };
            else if (Pieces.After(piece, "revision", "rev") is { } revision) made = made with { Revision = revision };
            else if (string.Equals(piece, "may be destroyed", StringComparison.OrdinalIgnoreCase)) made = made with { MayDestroy = true };
            else if (string.Equals(piece, "keep whole", StringComparison.OrdinalIgnoreCase)) made = made with { MayDestroy = false };
            else if (Pieces.Measured(piece, Units.Gram, "mass") is { } mass)
            {
                var grams = mass.Then(MassTyped.Grams);
                if (grams.TryValue(out var weighed)) made = made with { MassG = weighed.G, UG = weighed.UG ?? (weighed.DigitG > 0 ? weighed.DigitG : null) };
                else faults.AddRange(grams.Faults);
            }
            else
            {
                says.Add(piece);
            }
        }

        return faults.Count > 0 ? Outcome<SpecimenTyped>.Failed(faults) : made with { Says = string.Join(", ", says) };
    }

    /// <summary>The line to store.</summary>
    public Line Line() => Working.Line.Of("specimen").Set("specimen", Specimen).Set("says", Says).Set("from", From).Set("bought", Bought).Set("revision", Revision)
        .Set("may_destroy", MayDestroy).Set("mass_g", MassG).Set("u_g", UG);
}
