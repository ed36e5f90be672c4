using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Seeing.Measuring;

/// <summary>A length known from elsewhere that lies in the picture.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end, at another place.</param>
/// <param name="LengthMm">Its length, mm, above zero.</param>
/// <param name="UMm">Standard uncertainty of the length, mm, zero or more (default 0: a definition).</param>
/// <param name="HeightMm">Height of both ends above the board, mm, positive towards the camera (default 0).</param>
/// <param name="ClickPx">Standard uncertainty of each of its clicked ends, px, zero or more; null for that of the job.</param>
public sealed record ReferenceLength(PicturePoint From, PicturePoint To, double LengthMm, double UMm = 0, double HeightMm = 0, double? ClickPx = null)
{
    /// <summary>The target that it is the longest length of: its places then tell slant, lens and scale together. Null for a length of its own.</summary>
    public KnownTarget? Target { get; init; }

    /// <summary>True where it is no length of this picture but the scale of another one of the same camera and zoom, between these places looked at squarely.</summary>
    public bool Carried { get; init; }

    /// <summary>Which ruler of the picture it is a part of: parts of one ruler are one source, wrong together or not at all. Null for a length of its own.</summary>
    public int? Ruler { get; init; }

    /// <summary>A place between both ends, for a ruler one of its lines, and its distance from the first end, mm, above zero and below the length; null where none is known.</summary>
    public (PicturePoint At, double Mm)? Middle { get; init; }

    /// <summary>What it counts as: its two parts where a place between its ends is known, of which a slant along it makes one longer in the picture than the other; else itself.</summary>
    /// <param name="ruler">Which ruler of the picture it is where it has parts.</param>
    public IReadOnlyList<ReferenceLength> Parts(int ruler)
    {
        return Middle is { } middle ? [Part(From, middle.At, middle.Mm), Part(middle.At, To, LengthMm - middle.Mm)] : [this];

        // What a ruler is wrong by as a whole both parts share; as independent halves each is √2 as doubtful.
        ReferenceLength Part(PicturePoint from, PicturePoint to, double mm) => this with { From = from, To = to, LengthMm = mm, UMm = Math.Sqrt(2) * UMm * mm / LengthMm, Middle = null, Ruler = ruler };
    }

    /// <summary>The same, moved within its picture, px.</summary>
    public ReferenceLength Moved(double x, double y) => this with
    {
        From = new(From.X + x, From.Y + y),
        To = new(To.X + x, To.Y + y),
        Middle = Middle is { } middle ? (new(middle.At.X + x, middle.At.Y + y), middle.Mm) : null,
        Target = Target is null ? null : Target with { Tiles = [.. Target.Tiles.Select(tile => tile with { At = new(tile.At.X + x, tile.At.Y + y) })] },
    };
}
