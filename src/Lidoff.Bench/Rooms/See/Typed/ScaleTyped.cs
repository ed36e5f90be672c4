using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>A known length as it is typed: <c>26 mm ± 0.05, height 1.2 mm, camera 180 mm</c>; <c>6 mm ± 0.05, package of U1</c>.</summary>
/// <param name="Mm">Its length, mm, above zero.</param>
/// <param name="UMm">Its standard uncertainty, mm; null when none was typed.</param>
/// <param name="HeightMm">Height of its ends above the board, mm; null when none was typed.</param>
/// <param name="CameraMm">Distance from board to camera, mm; null when none was typed.</param>
/// <param name="Package">The spot whose recognised package it is; empty for none.</param>
public sealed record ScaleTyped(double Mm, double? UMm, double? HeightMm, double? CameraMm, string Package)
{
    /// <summary>Reads the line.</summary>
    public static Outcome<ScaleTyped> Read(string? text)
    {
        var pieces = Pieces.Of(text ?? "");
        var length = MmPieces.Length(pieces.Count > 0 ? pieces[0] : "");
        var packages = pieces.Skip(1).Select(piece => Pieces.After(piece, "package of", "package")).OfType<string>().ToList();
        var rest = MmPieces.Rest(pieces.Skip(1).Where(piece => Pieces.After(piece, "package") is null), withCamera: true);
        var spot = packages.Count == 0 ? "" : packages.Count == 1 ? SpotLetters.Designator(packages[0]) : null;
        if (length.Ok && rest.Ok && spot is not null) return new ScaleTyped(length.Value.Mm, length.Value.UMm, rest.Value.HeightMm, rest.Value.CameraMm, spot);
        return Outcome<ScaleTyped>.Failed([.. length.Faults, .. rest.Faults, .. spot is null ? [SeeSentences.WhichPackage] : (Fault[])[]]);
    }

    /// <summary>The line to store; <paramref name="clickPx"/> is the standard uncertainty of a click, px.</summary>
    public Line Line(string sha256, PicturePoint from, PicturePoint to, double clickPx) => Working.Line.Of("scale").Set("picture", sha256).Set("from", from.X, from.Y).Set("to", to.X, to.Y)
        .Set("length_mm", Mm).Set("u_mm", UMm).Set("height_mm", HeightMm).Set("camera_distance_mm", CameraMm).Set("click_u_px", clickPx).Set("package", Package);
}
