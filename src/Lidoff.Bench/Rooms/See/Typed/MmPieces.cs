using Lidoff.Bench.Typing;
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
        return TypedSpread.Read(text, Units.Millimetre, "length").Then(typed => TypedValue.Of(typed, Units.Millimetre, SeeSentences.NoRange))
            .Then<(double, double?)>(length => length.Value <= 0 ? SeeSentences.NotPositive(text) : (length.Value, length.U));
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
                faults.Add(SeeSentences.NoSuchPiece(piece, withCamera ? "height 1.2 mm, camera 180 mm and package of U1" : "height 1.2 mm"));
                continue;
            }

            var read = TypedQuantity.Read(text, Units.Millimetre, word);
            faults.AddRange(read.Faults);
            if (!read.TryValue(out var value)) continue;
            if (word == "height") height = TypedValue.Stored(value.Quantity.Si, Units.Millimetre);
            else camera = TypedValue.Stored(value.Quantity.Si, Units.Millimetre);
        }

        return faults.Count > 0 ? Outcome<(double?, double?)>.Failed(faults) : (height, camera);
    }
}
