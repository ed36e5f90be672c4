using Lidoff.Bench.Typing;
using Lidoff.Bench.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>The pitch of a target as it is typed: <c>2 mm ± 0.01, height 1.6 mm</c>; <c>1 mm, glass</c>. Without a doubt it is that of a print.</summary>
/// <param name="PitchMm">From one corner or dot to the next, mm, above zero.</param>
/// <param name="UMm">Its standard uncertainty, mm.</param>
/// <param name="HeightMm">Height of the target above the board, mm; null when none was typed.</param>
/// <param name="CameraMm">Distance from board to camera, mm; null when none was typed.</param>
public sealed record TargetTyped(double PitchMm, double UMm, double? HeightMm, double? CameraMm)
{
    private static readonly string[] Glass = ["glass", "on glass"];
    private static readonly string[] Printed = ["print", "printed", "paper", "on paper"];

    /// <summary>Reads the line.</summary>
    public static Outcome<TargetTyped> Read(string? text)
    {
        var pieces = Pieces.Of(text ?? "");
        var pitch = MmPieces.Length(pieces.Count > 0 ? pieces[0] : "");
        bool Is(string piece, string[] words) => words.Contains(piece.Trim(), StringComparer.OrdinalIgnoreCase);
        var rest = MmPieces.Rest(pieces.Skip(1).Where(piece => !Is(piece, Glass) && !Is(piece, Printed)), withCamera: true);
        if (!pitch.Ok || !rest.Ok) return Outcome<TargetTyped>.Failed([.. pitch.Faults, .. rest.Faults]);
        var usual = pieces.Skip(1).Any(piece => Is(piece, Glass)) ? KnownTarget.GlassU : KnownTarget.PrintedU;
        return new TargetTyped(pitch.Value.Mm, pitch.Value.UMm ?? Math.Round(usual * pitch.Value.Mm, 9), rest.Value.HeightMm, rest.Value.CameraMm);
    }

    /// <summary>The line to store for a target that was found.</summary>
    public Line Line(string sha256, string specimen, FoundTarget found) => Working.Line.Of("scale").Set("specimen", specimen).Set("picture", sha256)
        .With("pattern", json => TargetKeys.Write(json, KnownTarget.Of(found, PitchMm, UMm))).Set("height_mm", HeightMm).Set("camera_distance_mm", CameraMm);
}
