using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>What clicked places make: <c>J1 pitch</c>, <c>H1 circle</c>, <c>BT1 area, height 3 mm</c>, <c>F1 angle of the fold</c>. The spot may be left out where one is selected.</summary>
/// <param name="Spot">Its designator.</param>
/// <param name="Shape">What they make.</param>
/// <param name="What">Which of the spot's; empty for the usual name.</param>
/// <param name="HeightMm">Height of the places above the board, mm; null when none was typed.</param>
public sealed record ShapeTyped(string Spot, ShapeKind Shape, string What, double? HeightMm)
{
    /// <summary>Reads the line; <paramref name="selected"/> is the spot that is meant when none is typed, empty for none; <paramref name="places"/> were clicked.</summary>
    public static Outcome<ShapeTyped> Read(string? text, string selected, int places)
    {
        var pieces = Pieces.Of(text ?? "");
        var rest = MmPieces.Rest(pieces.Skip(1), withCamera: false);
        var words = (pieces.Count > 0 ? pieces[0] : "").Split(' ', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var first = words.Length > 0 && Word(words[0]) is null && SpotLetters.Designator(words[0]) is { } named ? named : "";
        var left = first.Length > 0 ? words[1..] : words;
        var faults = new List<Fault>();
        if (first.Length == 0 && selected.Length == 0) faults.Add(SeeSentences.WhichSpot);
        var shape = left.Length > 0 ? Word(left[0]) : null;
        if (shape is null) faults.Add(SeeSentences.WhichShape);
        if (shape == ShapeKind.Angle && places != 3) faults.Add(SeeSentences.AngleOfThree(places));
        faults.AddRange(rest.Faults);
        return faults.Count > 0 ? Outcome<ShapeTyped>.Failed(faults) : new ShapeTyped(first.Length > 0 ? first : selected, shape!.Value, string.Join(' ', left[1..]), rest.Value.HeightMm);
    }

    /// <summary>The line to store; <paramref name="clickPx"/> is the standard uncertainty of a click, px.</summary>
    public Line Line(string sha256, IReadOnlyList<PicturePoint> points, double clickPx) =>
        Of(Spot, What, Shape, sha256, points, HeightMm, clickPx);

    /// <summary>The line of a circle that was moved onto an edge.</summary>
    public Line Line(string sha256, FittedCircle fitted, IReadOnlyList<PicturePoint> clicked) =>
        Of(Spot, What, Shape, sha256, [.. fitted.Points.Select(point => new PicturePoint(Math.Round(point.X, 3), Math.Round(point.Y, 3)))], HeightMm, Math.Round(fitted.EachPx, 3)).Set("ends_by", PictureEdges.Program).Places("clicked", clicked);

    /// <summary>A shape as a line.</summary>
    internal static Line Of(string spot, string what, ShapeKind shape, string picture, IReadOnlyList<PicturePoint> points, double? heightMm, double clickPx) =>
        Working.Line.Of("shape").Set("spot", spot).Set("what", what).Set("shape", ClickedShapeKind.Shapes.First(each => each.Shape == shape).Word).Set("picture", picture).Places("points", points).Set("height_mm", heightMm).Set("click_u_px", clickPx);

    private static ShapeKind? Word(string word) => word.ToLowerInvariant() switch
    {
        "circle" or "hole" or "diameter" => ShapeKind.Circle,
        "pitch" => ShapeKind.Pitch,
        "angle" => ShapeKind.Angle,
        "area" => ShapeKind.Area,
        _ => null,
    };
}
