using Lidoff.Bench.Rooms.Open.Typed;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>Lengths as they are typed in this room, in mm.</summary>
internal static class MmPieces
{
    /// <summary>A length with its doubt: value and standard uncertainty, mm, above zero; a range is refused.</summary>
    public static Outcome<(double Mm, double? UMm)> Length(string text)
    {
        if (text.Length == 0) return SeeSentences.ScaleMissing;
        return TypedSpread.Read(text, Units.Millimetre, "length").Then<(double, double?)>(typed =>
            typed.Shape is not (SpreadShape.Exact or SpreadShape.Normal) ? SeeSentences.NoRange(text)
            : typed.Centre <= 0 ? SeeSentences.NotPositive(text)
            : (Mm(typed.Centre), typed.Shape == SpreadShape.Normal ? Mm(typed.U) : null));
    }

    /// <summary>What stands behind the first comma: "height 1.2 mm", "camera 180 mm", each at most once, in any order.</summary>
    public static Outcome<(double? HeightMm, double? CameraMm)> Rest(IEnumerable<string> pieces, bool withCamera)
    {
        double? height = null, camera = null;
        var faults = new List<Fault>();
        foreach (var piece in pieces)
        {
            var (word, text) = Pieces.After(piece, "height") is { } high ? ("height", high) : withCamera && Pieces.After(piece, "camera") is { } away ? ("camera", away) : ("", "");
            if (word.Length == 0)
            {
                faults.Add(SeeSentences.NoSuchPiece(piece, withCamera ? "height 1.2 mm and camera 180 mm" : "height 1.2 mm"));
                continue;
            }

            var read = TypedQuantity.Read(text, Units.Millimetre, word);
            faults.AddRange(read.Faults);
            if (!read.TryValue(out var value)) continue;
            if (word == "height") height = Mm(value.Quantity.Si);
            else camera = Mm(value.Quantity.Si);
        }

        return faults.Count > 0 ? Outcome<(double?, double?)>.Failed(faults) : (height, camera);
    }

    // From SI back to mm at ten digits, finer than any caliper, so that 26.05 stays 26.05.
    private static double Mm(double metres) => Math.Round(Units.Millimetre.FromSi(metres), 10);
}
