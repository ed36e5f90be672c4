using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>What a length is called: <c>U1 width, height 1 mm</c>. The spot may be left out where one is selected.</summary>
/// <param name="Spot">Its designator.</param>
/// <param name="What">Which length of it.</param>
/// <param name="HeightMm">Height of its ends above the board, mm; null when none was typed.</param>
public sealed record LengthTyped(string Spot, string What, double? HeightMm)
{
    /// <summary>The names by which the sides of a body are found again when a part is named.</summary>
    public const string LongSide = "long side", ShortSide = "short side";

    /// <summary>Reads the line of a length; <paramref name="selected"/> is the spot that is meant when none is typed, empty for none.</summary>
    public static Outcome<LengthTyped> Read(string? text, string selected) =>
        Both(text, selected).Then(read =>
            read.What.Length == 0 ? SeeSentences.WhichLength(read.Spot)
            : MmPieces.Length(read.What).Ok ? SeeSentences.NotItsName(read.What, read.Spot)
            : (Outcome<LengthTyped>)read);

    /// <summary>Reads the line of a body: a spot and perhaps a height.</summary>
    public static Outcome<LengthTyped> ReadBody(string? text, string selected) => Both(text, selected).Then(read => read.What.Length == 0
        ? read
        : (Outcome<LengthTyped>)SeeSentences.NoSuchPiece(read.What, "height 1.2 mm"));

    /// <summary>The line to store; <paramref name="clickPx"/> is the standard uncertainty of a click, px.</summary>
    public Line Line(string sha256, PicturePoint from, PicturePoint to, double clickPx) => Working.Line.Of("length").Set("spot", Spot).Set("what", What).Set("picture", sha256)
        .Set("from", from.X, from.Y).Set("to", to.X, to.Y).Set("height_mm", HeightMm).Set("click_u_px", clickPx);

    /// <summary>Both sides of a body whose corners were clicked in turn; the longer one is the long side.</summary>
    public IReadOnlyList<Line> Sides(string sha256, PicturePoint first, PicturePoint corner, PicturePoint last, double clickPx)
    {
        var firstIsLong = first.DistanceTo(corner) >= corner.DistanceTo(last);
        return
        [
            (this with { What = firstIsLong ? LongSide : ShortSide }).Line(sha256, first, corner, clickPx),
            (this with { What = firstIsLong ? ShortSide : LongSide }).Line(sha256, corner, last, clickPx),
        ];
    }

    /// <summary>The line of a length whose ends were moved onto edges.</summary>
    public Line Line(string sha256, FittedLength fitted, IReadOnlyList<PicturePoint> clicked, double clickPx) =>
        Line(sha256, fitted.From.Point, fitted.To.Point, clickPx).Set("ends_u_px", [Math.Round(fitted.From.UPx, 3), Math.Round(fitted.To.UPx, 3)]).Set("ends_by", PictureEdges.Program).Places("clicked", clicked);

    /// <summary>Both sides of a body whose outline was moved onto edges, each across its middle.</summary>
    public IReadOnlyList<Line> Sides(string sha256, FittedBody body, IReadOnlyList<PicturePoint> clicked, double clickPx)
    {
        var firstIsLong = body.First.From.Point.DistanceTo(body.First.To.Point) >= body.Second.From.Point.DistanceTo(body.Second.To.Point);
        return
        [
            (this with { What = firstIsLong ? LongSide : ShortSide }).Line(sha256, body.First, clicked, clickPx),
            (this with { What = firstIsLong ? ShortSide : LongSide }).Line(sha256, body.Second, clicked, clickPx),
        ];
    }

    private static Outcome<LengthTyped> Both(string? text, string selected)
    {
        var pieces = Pieces.Of(text ?? "");
        // "height 1 mm" alone belongs to the selected spot; anything else in front names spot and length.
        var named = pieces.Count > 0 && Pieces.After(pieces[0], "height") is null;
        var rest = MmPieces.Rest(pieces.Skip(named ? 1 : 0), withCamera: false);
        var (spot, what) = named ? Split(pieces[0], selected) : (selected, "");
        if (spot.Length == 0) return Outcome<LengthTyped>.Failed([SeeSentences.WhichSpot, .. rest.Faults]);
        return rest.Then(found => new LengthTyped(spot, what, found.HeightMm));
    }

    private static (string Spot, string What) Split(string text, string selected)
    {
        var words = text.Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return SpotLetters.Designator(words[0]) is { } spot ? (spot, words.Length > 1 ? words[1] : "") : (selected, text);
    }
}
